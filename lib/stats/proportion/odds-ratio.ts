import { requireOpenProbability } from '../check-argument';
import { type CannotCompute, cannotCompute } from '../outcome';
import { logRatioInterval } from './log-ratio-interval';
import { NO_TRIALS_IN_A_GROUP, type ProportionCounts, requireCounts } from './proportion-counts';
import type { RatioOfTwo } from './two-proportions';

const EMPTY_CELL = cannotCompute(
  'zero-denominator',
  'A group with no events, or with nothing but events, gives the odds ratio no finite logarithm.',
);

/**
 * The odds ratio x1 (n2 - x2) / ((n1 - x1) x2) with Woolf's interval on the log scale, whose variance is the sum of
 * the reciprocals of the four cells. Any empty cell, or an empty group: a reason.
 *
 * Source: Woolf (1955), Annals of Human Genetics 19:251-253 (citation from memory).
 * @throws ArgumentError when counts are no counts, events exceed trials, or the level is out of range.
 */
export function oddsRatio(
  first: ProportionCounts,
  second: ProportionCounts,
  level: number,
): RatioOfTwo | CannotCompute {
  return withAdded(0, first, second, level, 'Woolf log');
}

/**
 * The odds ratio after adding 1/2 to all four cells (Haldane 1956, Anscombe 1956, from memory), which always has an
 * interval. Meant for tables with an empty cell.
 * @throws ArgumentError as oddsRatio.
 */
export function oddsRatioHalfAdded(
  first: ProportionCounts,
  second: ProportionCounts,
  level: number,
): RatioOfTwo | CannotCompute {
  return withAdded(0.5, first, second, level, 'Woolf log, 1/2 added to each cell');
}

function withAdded(
  added: number,
  first: ProportionCounts,
  second: ProportionCounts,
  level: number,
  method: string,
): RatioOfTwo | CannotCompute {
  requireCounts('first', first);
  requireCounts('second', second);
  requireOpenProbability('level', level);
  if (first.trials === 0 || second.trials === 0) return NO_TRIALS_IN_A_GROUP;
  const a = first.events + added;
  const b = first.trials - first.events + added;
  const c = second.events + added;
  const d = second.trials - second.events + added;
  if (Math.min(a, b, c, d) === 0) return EMPTY_CELL;
  const estimate = (a * d) / (b * c);
  const se = Math.sqrt(1 / a + 1 / b + 1 / c + 1 / d);
  return {
    kind: 'estimate',
    estimate,
    interval: logRatioInterval(estimate, se, level, method),
    standardErrorOfLog: se,
    method: 'odds ratio',
    trialsInFirst: first.trials,
    trialsInSecond: second.trials,
  };
}
