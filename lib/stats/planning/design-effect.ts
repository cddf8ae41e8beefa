import { requireNonNegative } from '../check-argument';
import { ArgumentError } from '../outcome';

/** Units or batches come in clusters: batches hold units, treatment runs and sites hold batches. */
export type Clustering = {
  /** Mean number of observations per cluster, at least 1. */
  readonly meanSize: number;
  /** Correlation of two observations of one cluster, 0-1. */
  readonly intraClusterCorrelation: number;
  /** Standard deviation of cluster sizes over their mean; 0 = all alike. */
  readonly sizeVariation: number;
};

/**
 * By how much clustering multiplies the observations needed: 1 + ((1 + cv^2) m - 1) icc, which is 1 + (m - 1) icc
 * for clusters of one size.
 *
 * Source: Eldridge, Ashby & Kerry (2006, International Journal of Epidemiology 35, 1292-1300, from memory).
 */
export function designEffect({ meanSize, intraClusterCorrelation, sizeVariation }: Clustering): number {
  if (!(meanSize >= 1 && Number.isFinite(meanSize))) {
    throw new ArgumentError('meanSize', `must be at least 1, not ${meanSize}`);
  }
  if (!(intraClusterCorrelation >= 0 && intraClusterCorrelation <= 1)) {
    throw new ArgumentError(
      'intraClusterCorrelation',
      `must be between 0 and 1, not ${intraClusterCorrelation}`,
    );
  }
  requireNonNegative('sizeVariation', sizeVariation);
  return 1 + ((1 + sizeVariation ** 2) * meanSize - 1) * intraClusterCorrelation;
}
