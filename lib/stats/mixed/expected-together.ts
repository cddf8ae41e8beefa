import type { CannotCompute } from '../outcome';
import { contrastOf, type FixedEstimates, notEstimable } from './coefficients';
import type { CodedFixed } from './design/code-fixed';
import { designRow } from './design/design-columns';
import type { NewRow } from './design/fixed-term';
import type { CodedRandom } from './design/prepare-terms';
import { bilinear, dotProduct } from './linear-algebra/small-matrix';
import type { RandomEffects } from './random-effects';
import type { RandomSystem } from './random-system';

/** What is expected of several rows at once, on the scale the model is linear in. */
export type ExpectedTogether = {
  /** In the order of the rows; a reason where the fixed part of a row cannot be told from the data. */
  readonly estimates: readonly (number | CannotCompute)[];
  /** Covariance of the errors of the estimates, in the order of the rows; 0 for a row without an estimate. */
  readonly covariance: readonly (readonly number[])[];
  /** Degrees of freedom for the difference of each two rows; Infinity where there are none to speak of. */
  readonly degreesOfFreedom: readonly (readonly number[])[];
};

type Fitted = {
  readonly fixed: FixedEstimates;
  readonly randomEffects: readonly RandomEffects[];
  readonly varianceComponents: readonly { readonly variance: number }[];
  readonly residualStandardDeviation?: number;
};

type Coded = {
  readonly fixed: Omit<CodedFixed, 'rowCount'>;
  readonly random: readonly Pick<CodedRandom, 'name' | 'levels'>[];
};

type Part = {
  readonly estimate: number;
  readonly c: Float64Array;
  readonly z: Float64Array;
  readonly rest: Float64Array;
};

/**
 * Estimates x'beta-hat + z'b-hat of rows and the covariance of their errors x'(beta-hat - beta) + z'(b-hat - b), jointly:
 *   sigma^2 z1'S A^-1 S z2 + (c1 - G'S z1)' V (c2 - G'S z2) + the full variance of a term where both rows name the same
 *   level that has no data
 * (the notation of `rowVariance`). A random term that a row does not name takes no part: the row is then about the mean over
 * that term, for instance what a site can expect of a method over spawn lots and runs.
 *
 * The system must stand factored at the solution that `border` belongs to.
 * @throws ArgumentError when a row lacks a fixed term or names an unknown level of a fixed factor.
 */
export function expectedTogether(
  system: RandomSystem,
  terms: Coded,
  border: readonly Float64Array[],
  fit: Fitted,
  rows: readonly NewRow[],
  degreesOf: (c: Float64Array) => number,
): ExpectedTogether {
  const sigma2 = (fit.residualStandardDeviation ?? 1) ** 2;
  const parts = rows.map((row) => partOf(system, terms, border, fit, row));
  const both = <T>(at: (one: Part, other: Part, i: number, j: number) => T, none: T): T[][] =>
    parts.map((one, i) => parts.map((other, j) => (one && other ? at(one, other, i, j) : none)));
  return {
    estimates: parts.map((part) => part?.estimate ?? notEstimable('this combination of levels')),
    covariance: both(
      (one, other, i, j) =>
        sigma2 * dotProduct(one.z, other.z) +
        bilinear(fit.fixed.workingCovariance, one.rest, other.rest) +
        sharedUnknown(terms.random, fit, rows[i] as NewRow, rows[j] as NewRow),
      0,
    ),
    degreesOfFreedom: both(
      (one, other, i, j) =>
        i === j ? degreesOf(one.c) : degreesOf(one.c.map((value, at) => value - (other.c[at] as number))),
      Number.POSITIVE_INFINITY,
    ),
  };
}

function partOf(
  system: RandomSystem,
  terms: Coded,
  border: readonly Float64Array[],
  fit: Fitted,
  row: NewRow,
): Part | undefined {
  const found = contrastOf(fit.fixed, designRow(terms.fixed, row));
  if (!found) return undefined;
  const z = new Float64Array(system.size);
  let estimate = found.estimate;
  for (const [k, { name, levels }] of terms.random.entries()) {
    const at = row[name] === undefined ? -1 : levels.indexOf(String(row[name]));
    if (at < 0) continue;
    const position = system.positionOf[k]?.[at] as number;
    z[position] = system.scale[position] as number;
    estimate += fit.randomEffects[k]?.modes[at] as number;
  }
  system.forward(z);
  const rest = found.c.map((value, i) => value - dotProduct(border[i] as Float64Array, z));
  return { estimate, c: found.c, z, rest };
}

/** Variance of the terms of which both rows name one and the same level without data. */
function sharedUnknown(random: Coded['random'], fit: Fitted, one: NewRow, other: NewRow): number {
  return random.reduce((sum, { name, levels }, k) => {
    const label = one[name];
    const unknown = label !== undefined && label === other[name] && !levels.includes(String(label));
    return unknown ? sum + (fit.varianceComponents[k]?.variance ?? 0) : sum;
  }, 0);
}
