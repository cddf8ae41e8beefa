import type { CannotCompute } from '../outcome';
import { contrastOf, type FixedEstimates, notEstimable } from './coefficients';
import type { CodedFixed } from './design/code-fixed';
import { designRow } from './design/design-columns';
import type { NewRow } from './design/fixed-term';
import type { CodedRandom } from './design/prepare-terms';
import { bilinear } from './linear-algebra/small-matrix';
import type { Reach } from './linear-algebra/sparse-reach';
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
  readonly reach: Reach;
  readonly rest: Float64Array;
  /** Variances of the levels it names that have no data. */
  readonly unknown: ReadonlyMap<string, number>;
};

/**
 * Estimates x'beta-hat + z'b-hat of rows and the covariance of their errors x'(beta-hat - beta) + z'(b-hat - b), jointly:
 *   sigma^2 z1'S A^-1 S z2 + (c1 - G'S z1)' V (c2 - G'S z2) + the full variance of a term where both rows name the same
 *   level that has no data
 * (the notation of `rowVariances`). A random term that a row does not name takes no part: the row is then about the mean over
 * that term, for instance what a site can expect of a method over spawn lots and runs.
 *
 * The system must stand factored at the solution that `border` belongs to, as long as sets of rows are asked about.
 *
 * @returns a function of the rows of a set.
 * @throws ArgumentError when a row lacks a fixed term or names an unknown level of a fixed factor.
 */
export function expectedTogether(
  system: RandomSystem,
  terms: Coded,
  border: readonly Float64Array[],
  fit: Fitted,
  degreesOf: (c: Float64Array) => number,
): (rows: readonly NewRow[]) => ExpectedTogether {
  const sigma2 = (fit.residualStandardDeviation ?? 1) ** 2;
  const partOf = partsOf(system, terms, border, fit);
  const between = rememberedBetween(system);
  return (rows) => {
    const parts = rows.map(partOf);
    const both = <T>(at: (one: Part, other: Part) => T, none: T): T[][] => {
      const table = parts.map(() => parts.map(() => none));
      for (const [i, one] of parts.entries())
        for (const [j, other] of parts.slice(0, i + 1).entries()) {
          if (!one || !other) continue;
          const value = at(one, other);
          (table[i] as T[])[j] = value;
          (table[j] as T[])[i] = value;
        }
      return table;
    };
    return {
      estimates: parts.map((part) => part?.estimate ?? notEstimable('this combination of levels')),
      covariance: both(
        (one, other) =>
          sigma2 * between(one.reach, other.reach) +
          bilinear(fit.fixed.workingCovariance, one.rest, other.rest) +
          sharedUnknown(one, other),
        0,
      ),
      degreesOfFreedom: both(
        (one, other) =>
          one === other
            ? degreesOf(one.c)
            : degreesOf(one.c.map((value, at) => value - (other.c[at] as number))),
        Number.POSITIVE_INFINITY,
      ),
    };
  };
}

/** The parts of rows: what is needed of the whole factor is made once, from it each row takes what its levels touch. */
function partsOf(
  system: RandomSystem,
  terms: Coded,
  border: readonly Float64Array[],
  fit: Fitted,
): (row: NewRow) => Part | undefined {
  const solved = border.map((column) => {
    const whole = column.slice();
    system.backward(whole);
    return whole;
  });
  system.invert();
  const reachOf = rememberedReach(system);
  const places = terms.random.map(({ levels }) => new Map(levels.map((level, at) => [level, at])));
  return (row) => {
    const found = contrastOf(fit.fixed, designRow(terms.fixed, row));
    if (!found) return undefined;
    const positions: number[] = [];
    const unknown = new Map<string, number>();
    let estimate = found.estimate;
    for (const [k, { name }] of terms.random.entries()) {
      if (row[name] === undefined) continue;
      const label = String(row[name]);
      const at = places[k]?.get(label);
      if (at === undefined) {
        unknown.set(`${k} ${label}`, fit.varianceComponents[k]?.variance ?? 0);
        continue;
      }
      positions.push(system.positionOf[k]?.[at] as number);
      estimate += fit.randomEffects[k]?.modes[at] as number;
    }
    const rest = found.c.map((value, i) =>
      positions.reduce(
        (left, position) =>
          left - (system.scale[position] as number) * ((solved[i] as Float64Array)[position] as number),
        value,
      ),
    );
    return { estimate, c: found.c, reach: reachOf(positions), rest, unknown };
  };
}

/** Many rows name the same levels: a site's methods are asked about for each of its materials. */
function rememberedReach(system: RandomSystem): (positions: readonly number[]) => Reach {
  const reachOf = system.reaches();
  const known = new Map<string, Reach>();
  return (positions) => {
    const key = positions.join(' ');
    const reach = known.get(key) ?? reachOf(positions);
    known.set(key, reach);
    return reach;
  };
}

function rememberedBetween(system: RandomSystem): (one: Reach, other: Reach) => number {
  const known = new Map<Reach, Map<Reach, number>>();
  return (one, other) => {
    const ofOne = known.get(one) ?? new Map<Reach, number>();
    known.set(one, ofOne);
    const value = ofOne.get(other) ?? system.between(one, other);
    ofOne.set(other, value);
    return value;
  };
}

/** Variance of the levels without data that both rows name. */
function sharedUnknown(one: Part, other: Part): number {
  let sum = 0;
  for (const [level, variance] of one.unknown) if (other.unknown.has(level)) sum += variance;
  return sum;
}
