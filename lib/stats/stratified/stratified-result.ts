import type { CannotCompute, Interval } from '../outcome';

/** A common effect over strata. */
export type StratifiedEstimate = {
  readonly kind: 'estimate';
  readonly estimate: number;
  /** Standard error of the estimate (of its natural logarithm for a ratio). */
  readonly standardError: number | CannotCompute;
  readonly interval: Interval | CannotCompute;
  readonly method: string;
  /** Units in strata that hold both groups: the only ones the estimate rests on. */
  readonly units: number;
  /** Strata that hold at least one unit. */
  readonly strata: number;
  /** Strata in which both groups and both outcomes occur. */
  readonly informativeStrata: number;
};

/** A test of a hypothesis over strata, referred to chi-square. */
export type StratifiedTest = {
  readonly kind: 'test';
  readonly statistic: number;
  readonly degreesOfFreedom: number;
  readonly pValue: number;
  readonly method: string;
  readonly strata: number;
  readonly informativeStrata: number;
};
