import { normalCdf, normalDensity, normalSurvival } from './normal';

const FURTHEST = 9;

type Point = { readonly z: number; readonly weight: number; readonly below: number; readonly above: number };

const grids = new Map<number, readonly Point[]>();

/** z, density times step, P(Z <= z) and P(Z > z) on the grid of the trapezoidal rule. */
function gridFor(means: number): readonly Point[] {
  // The narrowest integrand, for small w, is density(z)^means with standard deviation 1 / sqrt(means).
  const step = Math.min(0.25, 0.8 / Math.sqrt(means));
  const known = grids.get(means);
  if (known) return known;
  const half = Math.ceil(FURTHEST / step);
  const grid = Array.from({ length: 2 * half + 1 }, (_, index) => {
    const z = (index - half) * step;
    return { z, weight: step * normalDensity(z), below: normalCdf(z), above: normalSurvival(z) };
  });
  grids.set(means, grid);
  return grid;
}

/**
 * The range w > 0 of `means` independent standard normals: P(range <= w) and P(range > w), each by its own sum so
 * that neither is a difference from 1.
 *
 * With z the smallest of the normals, P(range <= w) = means * integral of density(z) (Phi(z+w) - Phi(z))^(means-1),
 * and without the limit on the others the integral is 1. The trapezoidal rule converges faster than geometrically
 * for such smooth bell-shaped integrands.
 */
export function normalRange(w: number, means: number): { within: number; beyond: number } {
  const others = means - 1;
  let within = 0;
  let beyond = 0;
  for (const { z, weight, below, above } of gridFor(means)) {
    const pastLimit = normalSurvival(z + w);
    const inLimit = z > 0 ? above - pastLimit : normalCdf(z + w) - below;
    if (inLimit > 0) within += weight * inLimit ** others;
    const logKept = others * Math.log1p(-Math.min(pastLimit / above, 1));
    beyond -= weight * above ** others * Math.expm1(logKept);
  }
  return { within: Math.min(means * within, 1), beyond: Math.min(means * beyond, 1) };
}
