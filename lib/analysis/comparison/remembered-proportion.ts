import { type ClusteredProportion, clusteredProportion } from '@/lib/stats/clustered/clustered-proportion';
import type { CannotCompute } from '@/lib/stats/outcome';
import { shownLevel } from '../shown-figure';
import type { ClusterSum } from './figure-ground';

type Answer = ClusteredProportion | CannotCompute;

/** Enough for the cells of the largest network, twice over. */
const most = 20_000;
const answers = new Map<string, Answer>();

/**
 * The proportion of clustered units with its interval, remembered by the sums it rests on, which come sorted: its
 * interval takes milliseconds, a page shows hundreds, and most of them are the same from one look to the next.
 */
export function rememberedProportion(clusters: readonly ClusterSum[]): Answer {
  const events = clusters.map(({ numerator }) => numerator);
  const trials = clusters.map(({ denominator }) => denominator);
  const key = `${events.join()} of ${trials.join()}`;
  const known = answers.get(key);
  if (known) return known;
  const answer = clusteredProportion({ events, trials, level: shownLevel });
  const [oldest] = answers.keys();
  if (answers.size >= most && oldest !== undefined) answers.delete(oldest);
  answers.set(key, answer);
  return answer;
}
