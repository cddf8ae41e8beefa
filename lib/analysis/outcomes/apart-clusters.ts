import { perBatch } from './apart-batches';
import { type ApartWithin, flagsAt } from './apart-of-question';
import type { Measure } from './outcome-sums';

/** How many clusters count for a measure: of one method, or of all when undefined. */
export type ApartClusters = (measure: Measure, method: string | undefined) => number;

/** In the order of the flags. */
const measures: readonly Measure[] = ['contamination', 'yield', 'cropped', 'life'];

/**
 * Counts the clusters of batches whose runs reach over several sums, once for every row of a page: runs are one cluster
 * where a batch of both joins them.
 */
export function apartClusters(within: ApartWithin): ApartClusters {
  const { stretches, methodOf, methods, runs } = within;
  const clusterOf = clustersOfRuns(within);
  const ofMethods = methods.map(() => new Uint8Array(runs));
  for (const { numbers, start, end, today } of stretches)
    for (let at = start; at < end; at += perBatch) {
      const flags = ofMethods[methodOf[numbers[at + 5] ?? 0] ?? -1];
      if (flags === undefined) continue;
      const cluster = clusterOf[numbers[at] ?? 0] ?? 0;
      flags[cluster] = (flags[cluster] ?? 0) | flagsAt(numbers, at, today);
    }
  const all = new Uint8Array(runs);
  for (const flags of ofMethods)
    for (let cluster = 0; cluster < runs; cluster += 1)
      all[cluster] = (all[cluster] ?? 0) | (flags[cluster] ?? 0);
  const total = countsOf(all);
  const counts = new Map(ofMethods.map((flags, at) => [methods[at], countsOf(flags)]));
  return (measure, method) =>
    (method === undefined ? total : counts.get(method))?.[measures.indexOf(measure)] ?? 0;
}

/** Of each run the number of one that stands for its cluster. */
function clustersOfRuns({ joining, runs }: ApartWithin): Int32Array {
  const parents = new Int32Array(runs);
  for (let run = 0; run < runs; run += 1) parents[run] = run;
  const root = (of: number) => {
    let top = of;
    for (let up = parents[top] ?? top; up !== top; up = parents[top] ?? top) {
      // Halving the path on the way keeps long chains of shared runs fast.
      parents[top] = parents[up] ?? up;
      top = up;
    }
    return top;
  };
  for (const { runs: joined } of joining) {
    let cluster = root(joined[0] ?? 0);
    for (let at = 1; at < joined.length; at += 1) {
      const other = root(joined[at] ?? 0);
      parents[cluster] = other;
      cluster = other;
    }
  }
  for (let run = 0; run < runs; run += 1) parents[run] = root(run);
  return parents;
}

/** How many clusters have each flag. */
function countsOf(clusters: Uint8Array): readonly number[] {
  const ofFlags = new Array<number>(16).fill(0);
  for (let at = 0; at < clusters.length; at += 1) {
    const flags = clusters[at] ?? 0;
    if (flags !== 0) ofFlags[flags] = (ofFlags[flags] ?? 0) + 1;
  }
  return measures.map((_measure, bit) =>
    ofFlags.reduce((count, clustersOf, flags) => count + ((flags >> bit) & 1) * clustersOf, 0),
  );
}
