import { requireOpenProbability } from '../check-argument';
import { type CannotCompute, cannotCompute } from '../outcome';
import { logRatioInterval } from './log-ratio-interval';
import { NO_TRIALS_IN_A_GROUP, type ProportionCounts, requireCounts } from './proportion-counts';
import type { RatioOfTwo } from './two-proportions';

const NO_EVENTS_IN_A_GROUP = cannotCompute(
  'zero-denominator',
  'A group without any event gives the ratio of the two rates no finite interval; use the difference.',
);
const NO_EVENTS_AT_ALL = cannotCompute(
  'zero-denominator',
  'Neither group has an event, so the ratio of the two rates is not defined; use the difference.',
);

/**
 * The risk ratio (first proportion over second) with Katz's interval on the log scale,
 * se(log RR) = sqrt(1/x1 - 1/n1 + 1/x2 - 1/n2).
 *
 * No events in the first group: estimate 0 without an interval. None in the second: estimate Infinity without an
 * interval. None in either, or an empty group: a reason.
 * Source: Katz, Baptista, Azen & Pike (1978), Biometrics 34:469-474 (citation from memory).
 * @throws ArgumentError when counts are no counts, events exceed trials, or the level is out of range.
 */
export function riskRatio(
  first: ProportionCounts,
  second: ProportionCounts,
  level: number,
): RatioOfTwo | CannotCompute {
  requireCounts('first', first);
  requireCounts('second', second);
  requireOpenProbability('level', level);
  if (first.trials === 0 || second.trials === 0) return NO_TRIALS_IN_A_GROUP;
  if (first.events === 0 && second.events === 0) return NO_EVENTS_AT_ALL;
  return ratio(first, second, level, 'Katz log');
}

/**
 * The risk ratio after adding 1/2 to all four cells of the table (1/2 to the events, 1 to the trials), which always
 * has an interval. The estimate is drawn towards 1 and is meant for tables with an empty cell.
 * @throws ArgumentError as riskRatio.
 */
export function riskRatioHalfAdded(
  first: ProportionCounts,
  second: ProportionCounts,
  level: number,
): RatioOfTwo | CannotCompute {
  requireCounts('first', first);
  requireCounts('second', second);
  requireOpenProbability('level', level);
  if (first.trials === 0 || second.trials === 0) return NO_TRIALS_IN_A_GROUP;
  const added = ratio(
    { events: first.events + 0.5, trials: first.trials + 1 },
    { events: second.events + 0.5, trials: second.trials + 1 },
    level,
    'Katz log, 1/2 added to each cell',
  );
  return { ...added, trialsInFirst: first.trials, trialsInSecond: second.trials };
}

function ratio(first: ProportionCounts, second: ProportionCounts, level: number, method: string): RatioOfTwo {
  const sizes = { trialsInFirst: first.trials, trialsInSecond: second.trials };
  const estimate = first.events / first.trials / (second.events / second.trials);
  if (first.events === 0 || second.events === 0) {
    return {
      kind: 'estimate',
      estimate,
      interval: NO_EVENTS_IN_A_GROUP,
      standardErrorOfLog: NO_EVENTS_IN_A_GROUP,
      method: 'risk ratio',
      ...sizes,
    };
  }
  const se = Math.sqrt(relativeVariance(first) + relativeVariance(second));
  return {
    kind: 'estimate',
    estimate,
    interval: logRatioInterval(estimate, se, level, method),
    standardErrorOfLog: se,
    method: 'risk ratio',
    ...sizes,
  };
}

/** 1/x - 1/n without cancellation. */
function relativeVariance({ events, trials }: ProportionCounts): number {
  return (trials - events) / events / trials;
}
