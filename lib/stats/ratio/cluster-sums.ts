import { requireNonNegative } from '../check-argument';
import { elementAt } from '../element-at';
import { ArgumentError } from '../outcome';

/** Rows of a ratio: what is summed above and below the line, and the cluster (site, run or batch) of each row. */
export type RatioRows = {
  /** At least 0, such as fresh grams harvested. */
  readonly numerator: readonly number[];
  /** At least 0, such as dry grams of substrate. */
  readonly denominator: readonly number[];
  /** Rows with the same label are not independent and are added up first. */
  readonly cluster: readonly string[];
};

export type ClusterSum = { readonly label: string; readonly numerator: number; readonly denominator: number };

/**
 * Adds up the rows of each cluster, in the order in which the clusters first appear.
 * @throws ArgumentError when the lists differ in length or a value is negative or not finite.
 */
export function clusterSums({ numerator, denominator, cluster }: RatioRows): ClusterSum[] {
  if (denominator.length !== numerator.length) {
    throw new ArgumentError('denominator', `has ${denominator.length} rows, numerator ${numerator.length}`);
  }
  if (cluster.length !== numerator.length) {
    throw new ArgumentError('cluster', `has ${cluster.length} rows, numerator ${numerator.length}`);
  }
  const sums = new Map<string, { label: string; numerator: number; denominator: number }>();
  cluster.forEach((label, row) => {
    const above = elementAt(numerator, row);
    const below = elementAt(denominator, row);
    requireNonNegative(`numerator[${row}]`, above);
    requireNonNegative(`denominator[${row}]`, below);
    const sum = sums.get(label);
    if (sum === undefined) {
      sums.set(label, { label, numerator: above, denominator: below });
    } else {
      sum.numerator += above;
      sum.denominator += below;
    }
  });
  return [...sums.values()];
}

export function total(values: Iterable<number>): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum;
}
