import type { Measure } from './outcome-sums';
import { type ApartRuns, measuresOfRuns } from './read-apart-runs';

/** How many clusters count for a measure: of one method, or of all when undefined. */
export type ApartClusters = (measure: Measure, method: string | undefined) => number;

type ByMeasure = Record<Measure, Set<number>>;
const none = (): ByMeasure => ({
  contamination: new Set(),
  yield: new Set(),
  cropped: new Set(),
  life: new Set(),
});

/** Counts the clusters (labels by id) of runs that reach over several sums, once for every row of a page. */
export function apartClusters(
  { joined, alone }: ApartRuns,
  clusters: ReadonlyMap<string, string>,
): ApartClusters {
  // Labels are long; there are tens of thousands of them, and numbers are told apart ten times faster.
  const numbered = new Map<string, number>();
  const all = none();
  const byMethod = new Map<string, ByMeasure>();
  for (const { id, methodKey, counted } of joined) {
    const label = clusters.get(id) ?? id;
    const number = numbered.get(label) ?? numbered.size;
    numbered.set(label, number);
    const own = byMethod.get(methodKey) ?? none();
    byMethod.set(methodKey, own);
    for (const measure of counted) {
      all[measure].add(number);
      own[measure].add(number);
    }
  }
  const apartAlone = new Map(alone.map(([method, ...counts]) => [method ?? undefined, counts]));
  return (measure, method) =>
    ((method === undefined ? all : byMethod.get(method))?.[measure].size ?? 0) +
    (apartAlone.get(method)?.[measuresOfRuns.indexOf(measure)] ?? 0);
}
