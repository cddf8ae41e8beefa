import type { CannotCompute, Interval } from '../outcome';
import { NO_TRIALS, type ProportionCounts, requireCounts } from './proportion-counts';
import { wilsonInterval } from './wilson-interval';

export type OneProportion = {
  readonly kind: 'estimate';
  /** events / trials, 0-1. */
  readonly estimate: number;
  readonly interval: Interval | CannotCompute;
  readonly method: string;
  readonly events: number;
  readonly trials: number;
};

/**
 * The proportion of independent units with an event, with Wilson's score interval.
 *
 * @param level two-sided, 0 < level < 1.
 * @throws ArgumentError when the counts are no counts, there are more events than trials, or the level is out of range.
 */
export function oneProportion(counts: ProportionCounts, level: number): OneProportion | CannotCompute {
  requireCounts('counts', counts);
  const { events, trials } = counts;
  const interval = wilsonInterval(events, trials, level);
  if (trials === 0) return NO_TRIALS;
  return {
    kind: 'estimate',
    estimate: events / trials,
    interval,
    method: 'events over units',
    events,
    trials,
  };
}
