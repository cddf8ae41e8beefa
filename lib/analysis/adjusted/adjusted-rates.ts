import { tUpperQuantile } from '@/lib/stats/distribution/student-t';
import { marginalProbability } from '@/lib/stats/mixed/binomial/marginal-probability';
import type { FixedTerm } from '@/lib/stats/mixed/design/fixed-term';
import { recoveredDifference } from '@/lib/stats/proportion/recovered-difference';
import type { FitAnswer } from '../fitting/fit-request';
import { shownLevel } from '../shown-figure';
import { covariatePart, spreadOf } from './covariate-part';

/** Why a method (or a pair) has no adjusted rate. */
export type NotAdjusted = 'no-event' | 'no-shared-site' | 'not-enough-data';

export type Limited = { readonly estimate: number; readonly low: number; readonly high: number };

/** A method's adjusted rate, percent, averaged over sites; `further`: the range of its rate at one further site. */
export type AdjustedRate = { readonly method: string } & (
  | { readonly kind: 'rate'; readonly rate: Limited; readonly further: Limited }
  | { readonly kind: 'cannot'; readonly reason: NotAdjusted }
);

/** First minus second, in percentage points. */
export type RateDifference = { readonly first: string; readonly second: string } & (
  | {
      readonly kind: 'difference';
      readonly points: Limited;
      readonly pValue: number;
      readonly holmPValue: number;
    }
  | { readonly kind: 'cannot'; readonly reason: NotAdjusted }
);

export type AdjustedRates = {
  readonly rates: readonly AdjustedRate[];
  readonly differences: readonly RateDifference[];
  /** A random term has so few levels that limits of differences are too narrow (88 rather than 95 in 100 hold). */
  readonly fewLevels: boolean;
};

const reasonOf = (reason: string): NotAdjusted =>
  reason === 'separation' ? 'no-event' : reason === 'not-identifiable' ? 'no-shared-site' : 'not-enough-data';

/**
 * Rates and differences on the scale of a rate: E logistic(logit + everything that varies), sites, lots, runs, batches and
 * the mix of what was grown. Limits of a rate are those of its logit, by t on the fewest levels of a term that varies less
 * 1; those of a difference are recovered from both rates and the correlation of their logits, so that what both share
 * (how sites differ as a whole) does not widen it. The amount of variation itself is taken as known.
 */
export function adjustedRates(
  answer: FitAnswer,
  fixed: readonly FixedTerm[],
  factor = 'method',
): AdjustedRates {
  const { fit } = answer;
  const { means = [], pairs = [] } = answer.means[factor] ?? {};
  const varianceOf = (terms: readonly string[] | undefined) =>
    fit.varianceComponents
      .filter(({ term }) => terms === undefined || terms.includes(term))
      .reduce((sum, { variance }) => sum + variance, 0);
  const own = spreadOf(covariatePart(fit, fixed, 'own'));
  const mix = spreadOf(covariatePart(fit, fixed, 'mix'));
  const total = varianceOf(undefined) + own + mix;
  const betweenSites = varianceOf(['site', 'site x method']) + own;
  const levels = fit.varianceComponents.flatMap(({ term, variance }) => {
    const effects = fit.randomEffects.find((one) => one.term === term);
    return variance > 0 && effects ? [effects.levels.length] : [];
  });
  const reach = tUpperQuantile((1 - shownLevel) / 2, Math.min(Number.POSITIVE_INFINITY, ...levels) - 1);
  const limited = (logit: number, error: number, variance: number): Limited => ({
    estimate: marginalProbability(logit, variance),
    low: marginalProbability(logit - reach * error, variance),
    high: marginalProbability(logit + reach * error, variance),
  });
  const known = new Map(
    means.flatMap((mean) => (mean.kind === 'estimate' ? [[mean.level, mean] as const] : [])),
  );
  const rates = means.map((mean): AdjustedRate => {
    if (mean.kind !== 'estimate')
      return { kind: 'cannot', method: mean.level, reason: reasonOf(mean.reason) };
    const atFurther = Math.hypot(mean.standardError, Math.sqrt(betweenSites));
    return {
      kind: 'rate',
      method: mean.level,
      rate: percent(limited(mean.estimate, mean.standardError, total)),
      further: percent({
        ...limited(mean.estimate, atFurther, total - betweenSites),
        estimate: marginalProbability(mean.estimate, total),
      }),
    };
  });
  const differences = pairs.map((pair): RateDifference => {
    const { first, second } = pair;
    const [one, other] = [known.get(first), known.get(second)];
    if (pair.kind !== 'estimate') return { kind: 'cannot', first, second, reason: reasonOf(pair.reason) };
    if (!one || !other) return { kind: 'cannot', first, second, reason: 'no-shared-site' };
    const [a, b] = [one.standardError, other.standardError];
    const correlation = (a * a + b * b - pair.standardError ** 2) / (2 * a * b);
    const { estimate, interval } = recoveredDifference(
      limited(one.estimate, a, total),
      limited(other.estimate, b, total),
      Math.min(1, Math.max(-1, correlation)),
      shownLevel,
    );
    return {
      kind: 'difference',
      first,
      second,
      points: percent({ estimate, low: interval.low, high: interval.high }),
      pValue: pair.pValue,
      holmPValue: pair.holmPValue,
    };
  });
  return { rates, differences, fewLevels: (fit.fewLevels ?? []).length > 0 };
}

function percent({ estimate, low, high }: Limited): Limited {
  return { estimate: 100 * estimate, low: 100 * low, high: 100 * high };
}
