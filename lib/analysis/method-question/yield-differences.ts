import type { Limited, NotAdjusted } from '../adjusted/adjusted-rates';
import type { FitAnswer } from '../fitting/fit-request';

export type YieldDifference =
  | { readonly kind: 'difference'; readonly value: Limited; readonly holmPValue: number }
  | { readonly kind: 'cannot'; readonly reason: NotAdjusted };

/** The adjusted difference first minus second of a linear fit, on the scale it was fitted on. */
export function yieldDifference(
  answer: FitAnswer | undefined,
  first: string,
  second: string,
): YieldDifference {
  const pair = answer?.means.method?.pairs.find(
    (one) => (one.first === first && one.second === second) || (one.first === second && one.second === first),
  );
  if (pair?.kind !== 'estimate') {
    return {
      kind: 'cannot',
      reason: pair?.reason === 'not-identifiable' ? 'no-shared-site' : 'not-enough-data',
    };
  }
  const { estimate, interval, holmPValue } = pair;
  const value =
    pair.first === first
      ? { estimate, low: interval.low, high: interval.high }
      : { estimate: -estimate, low: -interval.high, high: -interval.low };
  return { kind: 'difference', value, holmPValue };
}

/** Differences of logs as percent more of the first. */
export function asPercentMore({ estimate, low, high }: Limited): Limited {
  const more = (log: number) => 100 * Math.expm1(log);
  return { estimate: more(estimate), low: more(low), high: more(high) };
}
