import type { CannotCompute, Interval } from '../outcome';

/** A comparison of two proportions: a difference, a risk ratio or an odds ratio. */
export type TwoProportions = {
  readonly kind: 'estimate';
  readonly estimate: number;
  readonly interval: Interval | CannotCompute;
  readonly method: string;
  readonly trialsInFirst: number;
  readonly trialsInSecond: number;
};

/** A ratio, with the standard error of its natural logarithm where that is finite. */
export type RatioOfTwo = TwoProportions & { readonly standardErrorOfLog: number | CannotCompute };
