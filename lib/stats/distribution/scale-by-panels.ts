import { legendreRule } from './legendre-rule';
import { logGamma } from './log-gamma';

const RULE = legendreRule(16);

/**
 * The mean of `of(s)` over s = chi(df) / sqrt(df), by 16 Gauss-Legendre points on each panel of u = 2 s^2. Panels are 2 wide
 * up to 100 degrees of freedom, 1 to 800, 1/2 to 5,000, 1/4 above, and end once one past u = 1 adds less than 1e-14.
 *
 * This is the published rule for the studentised range, and it decides the last digits of every published p-value: the
 * root in the density at u = 0 and a steep `of` are taken too coarsely for few degrees of freedom.
 * Source: Copenhaver & Holland (1988), J. Statist. Comput. Simul. 30:1-15 (citation from memory).
 */
export function meanOverScaleByPanels(of: (s: number) => number, df: number): number {
  const half = df <= 100 ? 1 : df <= 800 ? 0.5 : df <= 5000 ? 0.25 : 0.125;
  const shape = df / 2;
  const logConstant = shape * Math.log(df / 4) - logGamma(shape) + Math.log(half);
  let mean = 0;
  for (let panel = 1; panel <= 50; panel += 1) {
    const middle = (2 * panel - 1) * half;
    let share = 0;
    for (const { x, weight } of RULE) {
      const u = middle + half * x;
      const logDensity = logConstant + (shape - 1) * Math.log(u) - (df / 4) * u;
      if (logDensity >= -30) share += weight * Math.exp(logDensity) * of(Math.sqrt(u / 2));
    }
    mean += share;
    if (panel * half >= 1 && share <= 1e-14) break;
  }
  return mean;
}
