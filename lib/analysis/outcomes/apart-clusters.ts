import type { Measure } from './outcome-sums';
import type { ApartBatch } from './read-apart-runs';

/** How many clusters count for a measure: of one method, or of all when undefined. */
export type ApartClusters = (measure: Measure, method: string | undefined) => number;

/** In the order of the flags. */
const measures: readonly Measure[] = ['contamination', 'yield', 'cropped', 'life'];

/**
 * Counts the clusters of batches whose runs reach over several sums, once for every row of a page: runs are one cluster
 * where a batch of both joins them. Runs go by numbers: there are tens of thousands, and their ids are long.
 */
export function apartClusters(sites: ReadonlyMap<string, readonly ApartBatch[]>): ApartClusters {
  const numbers = new Map<string, number>();
  const parents: number[] = [];
  const numberOf = (run: string) => {
    const known = numbers.get(run);
    if (known !== undefined) return known;
    numbers.set(run, parents.length);
    return parents.push(parents.length) - 1;
  };
  const root = (of: number) => {
    let top = of;
    for (let up = parents[top] ?? top; up !== top; up = parents[top] ?? top) {
      // Halving the path on the way keeps long chains of shared runs fast.
      parents[top] = parents[up] ?? up;
      top = up;
    }
    return top;
  };
  for (const batches of sites.values())
    for (const { runIds } of batches) {
      const [first = '', ...others] = runIds;
      const own = numberOf(first);
      for (const other of others) parents[root(numberOf(other))] = root(own);
    }
  const all = new Uint8Array(parents.length);
  const byMethod = new Map<string, Uint8Array>();
  for (const batches of sites.values())
    for (const { runIds, methodKey, flags } of batches) {
      const cluster = root(numberOf(runIds[0] ?? ''));
      const own = byMethod.get(methodKey) ?? new Uint8Array(parents.length);
      byMethod.set(methodKey, own);
      own[cluster] = (own[cluster] ?? 0) | flags;
      all[cluster] = (all[cluster] ?? 0) | flags;
    }
  const countsOf = (flags: Uint8Array) =>
    measures.map((_measure, bit) => flags.reduce((count, own) => count + ((own >> bit) & 1), 0));
  const total = countsOf(all);
  const counts = new Map([...byMethod].map(([method, flags]) => [method, countsOf(flags)]));
  return (measure, method) =>
    (method === undefined ? total : counts.get(method))?.[measures.indexOf(measure)] ?? 0;
}
