/** So many sites have rows of their own on one page; totals are of all sites on every page. Our choice. */
const fewestSites = 10;
export const mostSites = 25;
/** Fewer sites, where their batches, which are read one by one, would be about more than these. Our choice. */
const mostBatches = 10_000;

/** How many sites are shown at once where all of them together have so many batches. */
export function sitesPerPage(batches: number, sites: number): number {
  if (batches === 0) return mostSites;
  const fitting = Math.floor((mostBatches * sites) / batches);
  return Math.min(mostSites, Math.max(fewestSites, fitting));
}
