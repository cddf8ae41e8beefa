import { elementAt } from '../element-at';
import { profileOfCounts } from './beta-binomial-profile';
import type { ClusterCount } from './cluster-counts';
import { proportionSum, type Steps } from './proportion-sum';

/** A possible intra-cluster correlation and how much the data speak for it; the weights add up to 1. */
export type WeightedCorrelation = { readonly correlation: number; readonly weight: number };

const SEARCH = 16;
const MOST_SEARCHES = 10;
/** Log-likelihood this far below the top has no say. */
const NEGLIGIBLE = 16;
const FINAL = 40;
/** Steps of the proportion that tell whether a correlation has a say, and those that tell how much. */
const ROUGH = 5;
const FINE = 12;

type Range = { readonly low: number; readonly high: number };

/**
 * What the clusters say about their intra-cluster correlation rho: its weight under the beta-binomial likelihood, with
 * the proportion averaged out under Jeffreys' weight and rho weighted 3 (1 - rho)^2 beforehand (mean 1/4), on a grid of
 * 40 values where the likelihood is. Unlike one estimate of rho it is never certain with few clusters, and exists at no
 * and at all events, where it leans on the weight beforehand.
 *
 * The weight is even in the share 1 - (1 - rho)^3. That share is the squared sine of an angle, and the grid is even in the
 * root of the angle: dense near 1, and so dense near 0 that the spike there of a few clusters of tens of thousands of units
 * has cells enough. The proportion has steps of its own at each rho: that likelihood is a hundred times narrower at a
 * small rho than at a large one.
 * @param clusters at least one, each with trials above 0.
 */
export function correlationWeights(clusters: readonly ClusterCount[]): WeightedCorrelation[] {
  const profile = profileOfCounts(clusters);
  let first: Steps | undefined;
  const logWeights = (roots: Range, cells: number, fewest: number) => {
    let from = first;
    return middles(roots, cells).map((root, index) => {
      const { logMean, next } = proportionSum(profile(correlation(root)), from, fewest);
      if (index === 0) first = next;
      from = next;
      return logMean + Math.log(root * Math.sin(2 * angleOf(root)));
    });
  };
  let roots: Range = { low: 0, high: 1 };
  for (let search = 0; search < MOST_SEARCHES; search += 1) {
    const next = narrowed(roots, logWeights(roots, SEARCH, ROUGH));
    const settled = width(next) > 0.7 * width(roots);
    roots = next;
    if (settled) break;
  }
  const logs = logWeights(roots, FINAL, FINE);
  const top = Math.max(...logs);
  const weights = logs.map((log) => Math.exp(log - top));
  const all = weights.reduce((total, weight) => total + weight, 0);
  return middles(roots, FINAL).map((root, index) => ({
    correlation: correlation(root),
    weight: elementAt(weights, index) / all,
  }));
}

/** The angle whose root, as a share of that of a right angle, is given. */
function angleOf(root: number): number {
  return (Math.PI / 2) * root ** 2;
}

/** rho whose share of the weight 3 (1 - rho)^2 is the squared sine of the angle. */
function correlation(root: number): number {
  return 1 - Math.cbrt(Math.cos(angleOf(root)) ** 2);
}

/** Middles of `cells` equal cells. */
function middles({ low, high }: Range, cells: number): number[] {
  return Array.from({ length: cells }, (_, index) => low + ((index + 0.5) / cells) * (high - low));
}

/** The cells that have a say, with one more on either side. */
function narrowed({ low, high }: Range, logs: readonly number[]): Range {
  const least = Math.max(...logs) - NEGLIGIBLE;
  const inside = logs.map((value) => value > least);
  const cell = (high - low) / inside.length;
  return {
    low: Math.max(low, low + (inside.indexOf(true) - 1) * cell),
    high: Math.min(high, low + (inside.lastIndexOf(true) + 2) * cell),
  };
}

function width({ low, high }: Range): number {
  return high - low;
}
