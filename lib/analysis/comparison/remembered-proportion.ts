import { type ClusteredProportion, clusteredProportion } from '@/lib/stats/clustered/clustered-proportion';
import type { CannotCompute } from '@/lib/stats/outcome';
import { shownLevel } from '../shown-figure';

type Answer = ClusteredProportion | CannotCompute;

/** Enough for the cells of the largest network, twice over. */
const most = 20_000;
const answers = new Map<string, Answer>();

export type ClusterRows = {
  readonly events: readonly number[];
  readonly trials: readonly number[];
  readonly cluster: readonly string[];
};

/** The clusters' own sums, sorted: what the answer depends on, whatever the clusters are called. */
function sumsOf({ events, trials, cluster }: ClusterRows): { events: number[]; trials: number[] } {
  const sums = new Map<string, [number, number]>();
  cluster.forEach((label, index) => {
    const [found, of] = sums.get(label) ?? [0, 0];
    sums.set(label, [found + (events[index] ?? 0), of + (trials[index] ?? 0)]);
  });
  const sorted = [...sums.values()].sort((a, b) => a[1] - b[1] || a[0] - b[0]);
  return { events: sorted.map(([found]) => found), trials: sorted.map(([, of]) => of) };
}

/**
 * The proportion of clustered units with its interval, remembered by the sums it rests on: its interval takes
 * milliseconds, a page shows hundreds, and most of them are the same from one look to the next.
 */
export function rememberedProportion(rows: ClusterRows): Answer {
  const sums = sumsOf(rows);
  const key = `${sums.events.join()} of ${sums.trials.join()}`;
  const known = answers.get(key);
  if (known) return known;
  const answer = clusteredProportion({ ...sums, level: shownLevel });
  const [oldest] = answers.keys();
  if (answers.size >= most && oldest !== undefined) answers.delete(oldest);
  answers.set(key, answer);
  return answer;
}
