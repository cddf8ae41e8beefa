import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type CountedSite, countBatchesAt } from './count-batches-at';
import type { SiteSearch } from './site-search.input';
import { siteView } from './site-view';
import { siteWhere } from './site-where';

/** All the sites that `findSites` finds, with how many batches each has. */
export async function listCountedSites(
  context: ReadContext,
  search: Pick<SiteSearch, 'siteName'> = { siteName: null },
): Promise<CountedSite[]> {
  const rows = await context.db.site.findMany({ where: siteWhere(search), orderBy: { name: 'asc' } });
  return countBatchesAt(context, rows.map(siteView));
}
