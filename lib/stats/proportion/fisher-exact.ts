import { requireOpenProbability } from '../check-argument';
import { increasingRoot } from '../distribution/increasing-root';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { type ConditionalEvents, conditionalEvents, tiltedPart } from './noncentral-hypergeometric';
import { NO_TRIALS_IN_A_GROUP, type ProportionCounts, requireCounts } from './proportion-counts';

export type FisherExact = {
  readonly kind: 'test';
  /** Two-sided: all tables with these margins that are no more likely than the one seen. */
  readonly pValue: number;
  /** Conditional maximum-likelihood odds ratio, first over second; 0 or Infinity at an end of the possible tables. */
  readonly oddsRatio: number | CannotCompute;
  /** Exact limits of the odds ratio; the lower can be 0, the upper Infinity. */
  readonly interval: Interval;
  readonly method: string;
};

const ONE_TABLE = cannotCompute(
  'no-variation',
  'With these group sizes and this number of events only one table is possible.',
);

/** Tables count as equally likely within this relative difference, as rounding would otherwise split ties. */
const TIES = 1e-7;
const FURTHEST = 700;

/**
 * Fisher's exact test that two proportions are equal, with the conditional maximum-likelihood odds ratio and its
 * exact limits. Right for independent units only. An empty group: a reason.
 *
 * Source: Fisher (1935); limits by inverting the two one-sided tests at (1 - level) / 2 each (Cornfield 1956, from
 * memory).
 * @throws ArgumentError when counts are no counts, events exceed trials, or the level is out of range.
 */
export function fisherExact(
  first: ProportionCounts,
  second: ProportionCounts,
  level: number,
): FisherExact | CannotCompute {
  requireCounts('first', first);
  requireCounts('second', second);
  requireOpenProbability('level', level);
  if (first.trials === 0 || second.trials === 0) return NO_TRIALS_IN_A_GROUP;
  const tables = conditionalEvents(first, second);
  const x = first.events;
  return {
    kind: 'test',
    pValue: fisherPValue(tables, x),
    oddsRatio: tables.least === tables.most ? ONE_TABLE : conditionalOddsRatio(tables, x),
    interval: { kind: 'interval', ...limits(tables, x, (1 - level) / 2), level, method: 'exact conditional' },
    method: 'Fisher exact',
  };
}

/** Sum of the probabilities of the tables no more likely than the one with x events in the first group. */
export function fisherPValue({ least, logDensities }: ConditionalEvents, x: number): number {
  const limit = (logDensities[x - least] ?? 0) + Math.log1p(TIES);
  let sum = 0;
  for (const logDensity of logDensities) if (logDensity <= limit) sum += Math.exp(logDensity);
  return Math.min(1, sum);
}

function conditionalOddsRatio(tables: ConditionalEvents, x: number): number {
  const { least, most } = tables;
  if (x === least) return 0;
  if (x === most) return Number.POSITIVE_INFINITY;
  const evaluate = (logOdds: number) => {
    const { mean, variance } = tiltedPart(tables, logOdds, least, most);
    return { value: mean - x, slope: variance };
  };
  return Math.exp(increasingRoot(evaluate, 0, -FURTHEST, FURTHEST));
}

function limits(tables: ConditionalEvents, x: number, tail: number): { low: number; high: number } {
  const { least, most } = tables;
  const logTail = Math.log(tail);
  const part = (logOdds: number, from: number, to: number) => {
    const all = tiltedPart(tables, logOdds, least, most);
    const some = tiltedPart(tables, logOdds, from, to);
    return { logProbability: some.logSum - all.logSum, meanShift: some.mean - all.mean };
  };
  const atLeast = (logOdds: number) => {
    const { logProbability, meanShift } = part(logOdds, x, most);
    return { value: logProbability - logTail, slope: meanShift };
  };
  const atMost = (logOdds: number) => {
    const { logProbability, meanShift } = part(logOdds, least, x);
    return { value: logTail - logProbability, slope: -meanShift };
  };
  return {
    low: x === least ? 0 : Math.exp(increasingRoot(atLeast, 0, -FURTHEST, FURTHEST)),
    high: x === most ? Number.POSITIVE_INFINITY : Math.exp(increasingRoot(atMost, 0, -FURTHEST, FURTHEST)),
  };
}
