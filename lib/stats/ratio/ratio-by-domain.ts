import { requireOpenProbability } from '../check-argument';
import { elementAt } from '../element-at';
import { ArgumentError, type CannotCompute, cannotCompute } from '../outcome';
import { clusterSums, type RatioRows, total } from './cluster-sums';

export type DomainRatio = {
  readonly domain: string;
  readonly estimate: number;
  readonly standardError: number;
  readonly rows: number;
  readonly clusters: number;
};

export type RatiosByDomain = {
  readonly kind: 'estimate';
  /** In alphabetical order of the domains. */
  readonly domains: readonly DomainRatio[];
  /** Row and column per domain; clusters that hold several domains make the ratios correlate. */
  readonly covariance: readonly (readonly number[])[];
  /** All clusters - 1. */
  readonly df: number;
  readonly level: number;
  /** Domains without any denominator, which have no ratio. */
  readonly domainsLeftOut: readonly string[];
};

/**
 * A ratio of sums for each domain (such as a method) when a cluster (such as a site) can hold several domains.
 *
 * The influence of cluster c on the ratio of domain d is (Y_cd - R_d X_cd) / X_d, and 0 where the cluster does not
 * hold the domain; covariance = k/(k-1) sum of outer products over all k clusters.
 * Fewer than 2 clusters, no rows, or no denominator anywhere: a reason.
 * Source: Cochran (1977), Sampling Techniques, 3rd edition, sections 2.13 and 6.4 (sections from memory).
 *
 * @param level of later comparisons, two-sided, 0 < level < 1.
 * @throws ArgumentError as ratioOfSums, and when domain differs in length.
 */
export function ratioByDomain(
  input: RatioRows & { readonly domain: readonly string[]; readonly level: number },
): RatiosByDomain | CannotCompute {
  const { numerator, denominator, cluster, domain, level } = input;
  requireOpenProbability('level', level);
  if (domain.length !== numerator.length) {
    throw new ArgumentError('domain', `has ${domain.length} rows, numerator ${numerator.length}`);
  }
  const labels = clusterSums(input).map((sum) => sum.label);
  const k = labels.length;
  if (k === 0) return cannotCompute('no-data', 'There are no batches to take a ratio of.');
  if (k < 2) {
    return cannotCompute(
      'too-few-clusters',
      'All the data comes from one independent group, so how far the figures could be off cannot be told.',
    );
  }
  const parts = [...new Set(domain)].sort().map((name) => {
    const rows = domain.flatMap((label, row) => (label === name ? [row] : []));
    const sums = clusterSums({
      numerator: rows.map((row) => elementAt(numerator, row)),
      denominator: rows.map((row) => elementAt(denominator, row)),
      cluster: rows.map((row) => elementAt(cluster, row)),
    });
    return { name, rows: rows.length, sums, below: total(sums.map((sum) => sum.denominator)) };
  });
  const held = parts.filter((part) => part.below > 0);
  if (held.length === 0) {
    return cannotCompute('zero-denominator', 'The amounts to divide by add up to zero.');
  }
  const withInfluence = held.map((part) => {
    const estimate = total(part.sums.map((sum) => sum.numerator)) / part.below;
    const influence = new Map(
      part.sums.map((sum) => [sum.label, (sum.numerator - estimate * sum.denominator) / part.below]),
    );
    return { ...part, estimate, influence };
  });
  const covariance = withInfluence.map((one) =>
    withInfluence.map(
      (two) =>
        (k / (k - 1)) *
        total(labels.map((label) => (one.influence.get(label) ?? 0) * (two.influence.get(label) ?? 0))),
    ),
  );
  return {
    kind: 'estimate',
    domains: withInfluence.map((part, index) => ({
      domain: part.name,
      estimate: part.estimate,
      standardError: Math.sqrt(elementAt(elementAt(covariance, index), index)),
      rows: part.rows,
      clusters: part.sums.length,
    })),
    covariance,
    df: k - 1,
    level,
    domainsLeftOut: parts.filter((part) => part.below === 0).map((part) => part.name),
  };
}
