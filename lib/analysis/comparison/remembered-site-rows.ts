import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { RememberedSums } from '../outcomes/remembered-sums';
import type { SiteRows } from '../outcomes/rows-of-sites';
import type { SiteDates } from './batch-facts';
import type { ComparedRow } from './compare';
import type { ComparisonFilter } from './comparison-filter.input';
import { readSiteRows } from './read-site-rows';
import { rowAsOf } from './row-as-of';

/** Of so many sites a question remembers the rows: two pages of them. */
const most = 50;

/** The rows of sites as `readSiteRows` has them; of those that nobody has written to since they were read, as remembered. */
export async function readRememberedSiteRows(
  context: ReadContext,
  filter: ComparisonFilter,
  sites: readonly string[],
  { joining, rowsOfSites }: Pick<RememberedSums, 'joining' | 'rowsOfSites'>,
  about: { readonly today: SiteDates; readonly asOf: string },
): Promise<SiteRows> {
  if (rowsOfSites === undefined) return readSiteRows(context, filter, sites, joining, about);
  const missing = sites.filter((site) => !rowsOfSites.has(site));
  const read =
    missing.length === 0
      ? { sites: [], cells: [] }
      : await readSiteRows(context, filter, missing, joining, about);
  const fresh = new Map(
    missing.map((site) => {
      const here = (row: ComparedRow) => row.site === site;
      const own: SiteRows = {
        sites: read.sites.filter(here),
        get cells() {
          return read.cells.filter(here);
        },
      };
      return [site, own] as const;
    }),
  );
  const shown = sites.flatMap((site) => fresh.get(site) ?? rowsOfSites.get(site) ?? []);
  for (const [site, rows] of fresh) rowsOfSites.set(site, rows);
  for (const oldest of rowsOfSites.keys()) {
    if (rowsOfSites.size <= most) break;
    rowsOfSites.delete(oldest);
  }
  const asked = (rows: readonly ComparedRow[]) => rows.map((row) => rowAsOf(row, about.asOf));
  return {
    sites: shown.flatMap((rows) => asked(rows.sites)),
    get cells() {
      return shown.flatMap((rows) => asked(rows.cells));
    },
  };
}
