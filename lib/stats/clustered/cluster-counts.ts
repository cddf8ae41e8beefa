import { requireEventsOfTrials } from '../check-argument';
import { elementAt } from '../element-at';
import { ArgumentError } from '../outcome';

/** Rows of units: events among trials, with the cluster (batch, run or site) of each row. */
export type ClusteredRows = {
  readonly events: readonly number[];
  readonly trials: readonly number[];
  /** Rows with the same label are not independent and are added up. Without it every row is its own cluster. */
  readonly cluster?: readonly string[];
};

export type ClusterCount = { readonly label: string; readonly events: number; readonly trials: number };

/** Clusters with units, and how many were left out because they had none. */
export type ClusterCounts = { readonly clusters: readonly ClusterCount[]; readonly emptyClusters: number };

/**
 * Adds up the rows of each cluster, in the order in which the clusters first appear.
 * @throws ArgumentError when lists differ in length, a value is no count, or a row has more events than trials.
 */
export function clusterCounts({ events, trials, cluster }: ClusteredRows): ClusterCounts {
  if (trials.length !== events.length) {
    throw new ArgumentError('trials', `has ${trials.length} rows, events ${events.length}`);
  }
  if (cluster !== undefined && cluster.length !== events.length) {
    throw new ArgumentError('cluster', `has ${cluster.length} rows, events ${events.length}`);
  }
  const sums = new Map<string, { label: string; events: number; trials: number }>();
  events.forEach((count, row) => {
    const of = elementAt(trials, row);
    requireEventsOfTrials(`events[${row}]`, count, `trials[${row}]`, of);
    const label = cluster === undefined ? String(row) : elementAt(cluster, row);
    const sum = sums.get(label);
    if (sum === undefined) {
      sums.set(label, { label, events: count, trials: of });
    } else {
      sum.events += count;
      sum.trials += of;
    }
  });
  const clusters = [...sums.values()].filter((sum) => sum.trials > 0);
  return { clusters, emptyClusters: sums.size - clusters.length };
}
