import type { Comparison } from '../comparison/compare';
import type { SitesRead } from './read-site-sums';

/** The rows of some sites and of each method there, the latter worked out when they are looked at. */
export type SiteRows = Pick<Comparison, 'sites' | 'cells'>;
/** By site. */
export type RowsOfSites = Map<string, SiteRows>;

function joinedAt({ beside }: SitesRead, site: string): string {
  const joining = (beside.sites.get(site)?.apart ?? []).flatMap((batches) => batches.joining);
  return joining
    .map(({ runIds }) => runIds.join())
    .sort()
    .join(' ');
}

/**
 * Of rows by site (of each method, or of all), those that still hold after sites were read anew: clusters at a site hang on
 * batches of several runs at any other, so where one of these is another nothing holds. They come in maps of their own:
 * somebody who reads in the old state may still add to the old ones.
 */
export function rowsThatHold(
  rows: ReadonlyMap<string | undefined, RowsOfSites | undefined>,
  before: SitesRead,
  read: SitesRead,
): ReadonlyMap<string | undefined, RowsOfSites> {
  const written = new Set(read.sums.written);
  if ([...written].some((site) => joinedAt(before, site) !== joinedAt(read, site))) return new Map();
  return new Map(
    [...rows].map(([method, own]) => [
      method,
      new Map([...(own ?? [])].filter(([site]) => !written.has(site))),
    ]),
  );
}
