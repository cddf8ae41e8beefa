import { requireCount, requireNonNegative } from '../check-argument';
import { ArgumentError } from '../outcome';
import { groupBy } from './group-by';

/**
 * How long some units were watched, and how that ended.
 *
 * Looks are intermittent, so `time` is the time to *finding*: from the start of incubation to the look that found
 * it, or to the last look at units still clean. An open batch counts for as long as it was watched.
 */
export type FollowUp = {
  /** Days (or any one unit) from the start, at least 0. */
  readonly time: number;
  /** What ended the watching, e.g. 'contaminated', 'discarded'; `null` while open (censored). A harvest ends nothing. */
  readonly cause: string | null;
  /** Units that share this record; 1 when left out. */
  readonly count?: number;
  /** What the units have in common, e.g. their treatment run. */
  readonly cluster?: string;
};

/** @throws ArgumentError for a time that is no number of at least 0, or a count that is no count. */
export function checkFollowUps(followUps: readonly FollowUp[]): void {
  for (const { time, count } of followUps) {
    requireNonNegative('time', time);
    if (count !== undefined) requireCount('count', count);
  }
}

/** Follow-ups grouped by cluster. @throws ArgumentError when one has no cluster. */
export function byCluster<T extends FollowUp>(followUps: readonly T[]): Map<string, T[]> {
  return groupBy(followUps, ({ cluster }) => {
    if (cluster === undefined) {
      throw new ArgumentError('cluster', 'must be given for every record when the variance is clustered');
    }
    return cluster;
  });
}
