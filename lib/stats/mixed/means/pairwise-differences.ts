import { tSurvival, tUpperQuantile } from '../../distribution/student-t';
import { tukeySurvival, tukeyUpperQuantile } from '../../distribution/studentized-range';
import { adjustPValues } from '../../multiplicity/adjust-p-values';
import type { CannotCompute, Interval } from '../../outcome';
import { contrastOf, notEstimable } from '../coefficients';
import type { MeansSource } from './marginal-means';
import { factorIndex, meanContrast } from './mean-contrast';

/** The difference of two adjusted means, first minus second. */
export type PairwiseDifference =
  | {
      readonly kind: 'estimate';
      readonly first: string;
      readonly second: string;
      readonly estimate: number;
      readonly standardError: number;
      readonly degreesOfFreedom: number;
      readonly statistic: number;
      /** Two-sided, for this pair alone. */
      readonly pValue: number;
      /** Adjusted for all pairs: Tukey's studentised range at the pair's own df, Holm, Bonferroni. */
      readonly tukeyPValue: number;
      readonly holmPValue: number;
      readonly bonferroniPValue: number;
      /** For this pair alone. */
      readonly interval: Interval;
      /** Covers all pairs at once. */
      readonly tukeyInterval: Interval;
      readonly method: string;
    }
  | (CannotCompute & { readonly first: string; readonly second: string });

/**
 * All pairwise differences of a factor's adjusted means. The family the adjustments count is the pairs (and means) that can
 * be estimated; Tukey's adjustment is exact for balanced data and conservative otherwise (Hayter 1984, from memory).
 */
export function pairwiseDifferences(source: MeansSource, factor: string, level = 0.95): PairwiseDifference[] {
  const levels = source.terms.fixed.factors[factorIndex(source.terms, factor)]?.levels ?? [];
  const contrasts = levels.map((_, index) => meanContrast(source.terms, factor, index));
  const compared = new Set<string>();
  const pairs = levels.flatMap((first, i) =>
    levels.slice(i + 1).map((second, offset) => {
      const other = contrasts[i + 1 + offset] as Float64Array;
      const l = (contrasts[i] as Float64Array).map((value, k) => value - (other[k] as number));
      const found = contrastOf(source.fixed, l);
      if (!found) return { first, second };
      compared.add(first).add(second);
      const degreesOfFreedom = source.degreesOf(found.c);
      const statistic = found.estimate / found.standardError;
      const pValue = 2 * tSurvival(Math.abs(statistic), degreesOfFreedom);
      return { first, second, ...found, degreesOfFreedom, statistic, pValue };
    }),
  );
  const pValues = pairs.flatMap((pair) => ('pValue' in pair ? [pair.pValue] : []));
  const holm = adjustPValues(pValues, 'holm');
  const bonferroni = adjustPValues(pValues, 'bonferroni');
  let at = 0;
  return pairs.map((pair) => {
    const { first, second } = pair;
    if (!('pValue' in pair)) {
      return { ...(source.whyNot ?? notEstimable)(`${factor} ${first} - ${second}`), first, second };
    }
    const { estimate, standardError, degreesOfFreedom, statistic, pValue } = pair;
    const reach = tUpperQuantile((1 - level) / 2, degreesOfFreedom) * standardError;
    const wide =
      (tukeyUpperQuantile(1 - level, compared.size, degreesOfFreedom) / Math.SQRT2) * standardError;
    const own = at++;
    const method = Number.isFinite(degreesOfFreedom) ? 't' : 'normal';
    return {
      kind: 'estimate',
      first,
      second,
      estimate,
      standardError,
      degreesOfFreedom,
      statistic,
      pValue,
      tukeyPValue: tukeySurvival(Math.abs(statistic) * Math.SQRT2, compared.size, degreesOfFreedom),
      holmPValue: holm[own] as number,
      bonferroniPValue: bonferroni[own] as number,
      interval: { kind: 'interval', low: estimate - reach, high: estimate + reach, level, method },
      tukeyInterval: {
        kind: 'interval',
        low: estimate - wide,
        high: estimate + wide,
        level,
        method: 'Tukey',
      },
      method: 'difference of least-squares means',
    };
  });
}
