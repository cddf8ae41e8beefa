import { elementAt } from '../element-at';
import { profileOfCounts } from './beta-binomial-profile';
import type { ClusterCount } from './cluster-counts';

/** A possible intra-cluster correlation and how much the data speak for it; the weights add up to 1. */
export type WeightedCorrelation = { readonly correlation: number; readonly weight: number };

const SEARCH = 16;
const MOST_SEARCHES = 10;
/** Log-likelihood this far below the top has no say. */
const NEGLIGIBLE = 16;
const FINAL = 40;

type Range = { readonly low: number; readonly high: number };
type Place = { readonly angles: Range; readonly shares: Range };

/**
 * What the clusters say about their intra-cluster correlation rho: its weight under the beta-binomial likelihood, with
 * the proportion averaged out under Jeffreys' weight and rho weighted 3 (1 - rho)^2 beforehand (mean 1/4), on a grid of
 * 40 values where the likelihood is. Unlike one estimate of rho it is never certain with few clusters, and exists at no
 * and at all events, where it leans on the weight beforehand.
 *
 * The grid is even in asin(sqrt(proportion)) and in 1 - (1 - rho)^3, where the two weights are even.
 * @param clusters at least one, each with trials above 0.
 */
export function correlationWeights(clusters: readonly ClusterCount[]): WeightedCorrelation[] {
  const profile = profileOfCounts(clusters);
  const table = ({ angles, shares }: Place, cells: number) => {
    const columns = middles(shares, cells).map((share) => profile(correlation(share)));
    return middles(angles, cells).map((angle) => {
      const proportion = Math.sin(angle) ** 2;
      return columns.map((column) => column(proportion));
    });
  };
  let place: Place = { angles: { low: 0, high: Math.PI / 2 }, shares: { low: 0, high: 1 } };
  for (let search = 0; search < MOST_SEARCHES; search += 1) {
    const next = narrowed(place, table(place, SEARCH));
    const settled =
      width(next.angles) > 0.7 * width(place.angles) && width(next.shares) > 0.7 * width(place.shares);
    place = next;
    if (settled) break;
  }
  const rows = table(place, FINAL);
  const top = highest(rows);
  const sums = middles(place.shares, FINAL).map((_, column) =>
    rows.reduce((sum, row) => sum + Math.exp(elementAt(row, column) - top), 0),
  );
  const all = sums.reduce((total, sum) => total + sum, 0);
  return middles(place.shares, FINAL).map((share, index) => ({
    correlation: correlation(share),
    weight: elementAt(sums, index) / all,
  }));
}

/** rho from its share of the weight 3 (1 - rho)^2. */
function correlation(share: number): number {
  return 1 - Math.cbrt(1 - share);
}

/** Middles of `cells` equal cells. */
function middles({ low, high }: Range, cells: number): number[] {
  return Array.from({ length: cells }, (_, index) => low + ((index + 0.5) / cells) * (high - low));
}

function highest(rows: readonly (readonly number[])[]): number {
  return rows.reduce((most, row) => Math.max(most, ...row), Number.NEGATIVE_INFINITY);
}

/** The cells that have a say, with one more on either side. */
function narrowed({ angles, shares }: Place, rows: readonly (readonly number[])[]): Place {
  const least = highest(rows) - NEGLIGIBLE;
  const columns = rows.map((_, index) => index);
  return {
    angles: around(
      angles,
      rows.map((row) => row.some((value) => value > least)),
    ),
    shares: around(
      shares,
      columns.map((column) => rows.some((row) => elementAt(row, column) > least)),
    ),
  };
}

function around({ low, high }: Range, inside: readonly boolean[]): Range {
  const cell = (high - low) / inside.length;
  return {
    low: Math.max(low, low + (inside.indexOf(true) - 1) * cell),
    high: Math.min(high, low + (inside.lastIndexOf(true) + 2) * cell),
  };
}

function width({ low, high }: Range): number {
  return high - low;
}
