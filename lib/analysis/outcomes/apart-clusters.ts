import type { Measure } from './outcome-sums';
import type { ApartOfQuestion } from './read-apart-runs';

/** How many clusters count for a measure: of one method, or of all when undefined. */
export type ApartClusters = (measure: Measure, method: string | undefined) => number;

/** In the order of the flags. */
const measures: readonly Measure[] = ['contamination', 'yield', 'cropped', 'life'];

/**
 * Counts the clusters of batches whose runs reach over several sums, once for every row of a page: runs are one cluster
 * where a batch of both joins them.
 */
export function apartClusters({ sites, numbers }: ApartOfQuestion): ApartClusters {
  const parents = new Int32Array(numbers.size);
  for (let run = 0; run < parents.length; run += 1) parents[run] = run;
  const root = (of: number) => {
    let top = of;
    for (let up = parents[top] ?? top; up !== top; up = parents[top] ?? top) {
      // Halving the path on the way keeps long chains of shared runs fast.
      parents[top] = parents[up] ?? up;
      top = up;
    }
    return top;
  };
  for (const cells of sites.values())
    for (const { joining } of cells)
      for (const { runs } of joining) for (const run of runs) parents[root(run)] = root(runs[0] ?? run);
  const all = new Uint8Array(numbers.size);
  const byMethod = new Map<string, Uint8Array>();
  for (const cells of sites.values())
    for (const { methodKey, runs, flags } of cells) {
      const own = byMethod.get(methodKey) ?? new Uint8Array(numbers.size);
      byMethod.set(methodKey, own);
      for (let at = 0; at < runs.length; at += 1) {
        const cluster = root(runs[at] ?? 0);
        own[cluster] = (own[cluster] ?? 0) | (flags[at] ?? 0);
        all[cluster] = (all[cluster] ?? 0) | (flags[at] ?? 0);
      }
    }
  const total = countsOf(all);
  const counts = new Map([...byMethod].map(([method, flags]) => [method, countsOf(flags)]));
  return (measure, method) =>
    (method === undefined ? total : counts.get(method))?.[measures.indexOf(measure)] ?? 0;
}

/** How many clusters have each flag. */
function countsOf(clusters: Uint8Array): readonly number[] {
  const ofFlags = new Array<number>(16).fill(0);
  for (const flags of clusters) ofFlags[flags] = (ofFlags[flags] ?? 0) + 1;
  return measures.map((_measure, bit) =>
    ofFlags.reduce((count, clustersOf, flags) => count + ((flags >> bit) & 1) * clustersOf, 0),
  );
}
