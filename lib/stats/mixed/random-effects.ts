import type { CodedRandom } from './design/prepare-terms';
import { solveLower } from './linear-algebra/dense-cholesky';
import { dotProduct } from './linear-algebra/small-matrix';
import type { RandomSystem } from './random-system';

/** Conditional modes (BLUPs) of one term's levels, in the order of `levels`. */
export type RandomEffects = {
  readonly term: string;
  readonly levels: readonly string[];
  readonly modes: Float64Array;
  /** Var(b | y) with the fixed coefficients taken as known. */
  readonly conditionalVariances: Float64Array;
  /** Var(b-hat - b), which also counts the error in the fixed coefficients (Henderson 1975, from memory). */
  readonly predictionErrorVariances: Float64Array;
};

/**
 * Modes and variances of all random effects at a solution at which `system` is factored: b = S u, and the variances
 * sigma^2 S A^-1 S and sigma^2 S C^-1 S (random block of the inverse of the mixed model equations).
 */
export function randomEffects(
  system: RandomSystem,
  terms: readonly Pick<CodedRandom, 'name' | 'levels'>[],
  solution: {
    readonly u: Float64Array;
    readonly border: readonly Float64Array[];
    readonly fixedFactor: Float64Array;
  },
  sigma2: number,
): RandomEffects[] {
  if (terms.length === 0) return [];
  system.invert();
  const p = solution.border.length;
  const spread = solution.border.map((column) => column.slice());
  for (const column of spread) system.backward(column);
  const row = new Float64Array(p);
  return terms.map(({ name, levels }, k) => {
    const positions = system.positionOf[k] as Int32Array;
    const modes = new Float64Array(levels.length);
    const conditionalVariances = new Float64Array(levels.length);
    const predictionErrorVariances = new Float64Array(levels.length);
    for (let level = 0; level < levels.length; level++) {
      const j = positions[level] as number;
      const scale = system.scale[j] as number;
      const variance = system.inverseDiagonal(j);
      for (let i = 0; i < p; i++) row[i] = (spread[i] as Float64Array)[j] as number;
      solveLower(solution.fixedFactor, 0, p, row);
      modes[level] = scale * (solution.u[j] as number);
      conditionalVariances[level] = sigma2 * scale * scale * variance;
      predictionErrorVariances[level] = sigma2 * scale * scale * (variance + dotProduct(row, row));
    }
    return { term: name, levels, modes, conditionalVariances, predictionErrorVariances };
  });
}
