import type { FixedEstimates } from './coefficients';
import type { NewRow } from './design/fixed-term';
import type { CodedRandom } from './design/prepare-terms';
import { bilinear } from './linear-algebra/small-matrix';
import type { RandomEffects } from './random-effects';
import type { RandomSystem } from './random-system';
import { type SpreadOf, spreadByInverse, spreadBySolving } from './row-spread';

export type RowVariance = { readonly shift: number; readonly variance: number };

/** From so many rows on the inverse costs less than solving for each. */
const MANY_NEW_ROWS = 200;

/**
 * The random part of new rows: the sum of a row's levels' modes, and the variance of x'beta-hat + z'(b-hat - b), which is
 *   sigma^2 z'S A^-1 S z + (c - G'S z)' V (c - G'S z) + the full variance of every term whose level has no data,
 * G = A^-1 S Z'WX, V the covariance of the working coefficients and c the fixed part's working contrast.
 * The system must stand factored at the solution that `border` belongs to.
 *
 * @param rowCount how many rows will be asked about, which decides how and not what is worked out.
 */
export function rowVariances(
  system: RandomSystem,
  terms: readonly Pick<CodedRandom, 'name' | 'levels'>[],
  solution: { readonly border: readonly Float64Array[] },
  fit: {
    readonly fixed: FixedEstimates;
    readonly randomEffects: readonly RandomEffects[];
    readonly varianceComponents: readonly { readonly variance: number }[];
    readonly residualStandardDeviation?: number;
  },
  rowCount: number,
): (c: Float64Array, row: NewRow) => RowVariance {
  const sigma2 = (fit.residualStandardDeviation ?? 1) ** 2;
  const places = terms.map(({ levels }) => new Map(levels.map((level, at) => [level, at])));
  const solving = spreadBySolving(system, solution.border);
  const spreadOf: SpreadOf =
    rowCount < MANY_NEW_ROWS ? solving : spreadByInverse(system, solution.border, solving);
  return (c, row) => {
    const positions: number[] = [];
    let shift = 0;
    let unknown = 0;
    for (const [k, { name }] of terms.entries()) {
      const at = row[name] === undefined ? undefined : places[k]?.get(String(row[name]));
      if (at === undefined) {
        unknown += fit.varianceComponents[k]?.variance ?? 0;
        continue;
      }
      positions.push(system.positionOf[k]?.[at] as number);
      shift += fit.randomEffects[k]?.modes[at] as number;
    }
    const { own, overlaps } = spreadOf(positions);
    const rest = c.map((value, i) => value - (overlaps[i] ?? 0));
    return { shift, variance: sigma2 * own + bilinear(fit.fixed.workingCovariance, rest, rest) + unknown };
  };
}
