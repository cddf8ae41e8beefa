import type { ShownFigure } from '../shown-figure';

/** How much of a figure comes from each site: what decides whether it may be published without naming one. */
export type SiteAmount = { readonly siteId: string; readonly amount: number };

/** A figure with the sites' shares in its total (grams, units or people, as the figure counts them). */
export type FigureBySite = { readonly figure: ShownFigure; readonly bySite: readonly SiteAmount[] };

/** Adds up the amounts of each site, sorted by site id; a site that adds nothing is not in it. */
export function amountsBySite(rows: readonly SiteAmount[]): SiteAmount[] {
  const sums = new Map<string, number>();
  for (const { siteId, amount } of rows) sums.set(siteId, (sums.get(siteId) ?? 0) + amount);
  return [...sums]
    .map(([siteId, amount]) => ({ siteId, amount }))
    .filter(({ amount }) => amount !== 0)
    .sort((a, b) => a.siteId.localeCompare(b.siteId));
}
