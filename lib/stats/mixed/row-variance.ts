import type { FixedEstimates } from './coefficients';
import type { NewRow } from './design/fixed-term';
import type { CodedRandom } from './design/prepare-terms';
import { bilinear } from './linear-algebra/small-matrix';
import type { RandomEffects } from './random-effects';
import type { RandomSystem } from './random-system';

/**
 * The random part of one new row: the sum of its levels' modes, and the variance of x'beta-hat + z'(b-hat - b), which is
 *   sigma^2 z'S A^-1 S z + (c - G'S z)' V (c - G'S z) + the full variance of every term whose level has no data,
 * G = A^-1 S Z'WX, V the covariance of the working coefficients and c the fixed part's working contrast.
 * The system must stand factored at the solution that `border` belongs to.
 */
export function rowVariance(
  system: RandomSystem,
  terms: readonly Pick<CodedRandom, 'name' | 'levels'>[],
  solution: { readonly border: readonly Float64Array[] },
  fit: {
    readonly fixed: FixedEstimates;
    readonly randomEffects: readonly RandomEffects[];
    readonly varianceComponents: readonly { readonly variance: number }[];
    readonly residualStandardDeviation?: number;
  },
  c: Float64Array,
  row: NewRow,
): { readonly shift: number; readonly variance: number } {
  const sigma2 = (fit.residualStandardDeviation ?? 1) ** 2;
  const scaled = new Float64Array(system.size);
  let shift = 0;
  let unknown = 0;
  for (const [k, { name, levels }] of terms.entries()) {
    const at = row[name] === undefined ? -1 : levels.indexOf(String(row[name]));
    if (at < 0) {
      unknown += fit.varianceComponents[k]?.variance ?? 0;
      continue;
    }
    const position = system.positionOf[k]?.[at] as number;
    scaled[position] = system.scale[position] as number;
    shift += fit.randomEffects[k]?.modes[at] as number;
  }
  system.forward(scaled);
  let own = 0;
  for (const value of scaled) own += value * value;
  const rest = c.map((value, i) => {
    const column = solution.border[i] as Float64Array;
    let overlap = 0;
    for (let j = 0; j < column.length; j++) overlap += (column[j] as number) * (scaled[j] as number);
    return value - overlap;
  });
  return { shift, variance: sigma2 * own + bilinear(fit.fixed.workingCovariance, rest, rest) + unknown };
}
