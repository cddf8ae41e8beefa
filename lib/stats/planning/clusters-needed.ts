import { type Clustering, designEffect } from './design-effect';
import { wholeNumber } from './whole-number';

export type ClustersNeeded = {
  readonly designEffect: number;
  /** Observations per group after inflation. */
  readonly observationsPerGroup: number;
  readonly clustersPerGroup: number;
  readonly clustersPerGroupWhole: number;
};

/**
 * Inflates a number of independent observations per group for clustering, and gives the clusters it takes.
 * Below some 10 clusters per group the normal theory behind the number is optimistic: add one or two per group.
 */
export function clustersNeeded(observationsPerGroup: number, clustering: Clustering): ClustersNeeded {
  const effect = designEffect(clustering);
  const inflated = observationsPerGroup * effect;
  const clustersPerGroup = inflated / clustering.meanSize;
  return {
    designEffect: effect,
    observationsPerGroup: inflated,
    clustersPerGroup,
    clustersPerGroupWhole: wholeNumber(clustersPerGroup),
  };
}
