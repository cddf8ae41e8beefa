import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type CountedSite, countBatchesAt } from './count-batches-at';
import { type FoundSites, findSites } from './find-sites.query';
import type { SiteSearch } from './site-search.input';

/** The page of `findSites`, with how many batches each site has. */
export async function findCountedSites(
  context: ReadContext,
  search: SiteSearch,
): Promise<FoundSites<CountedSite>> {
  const found = await findSites(context, search);
  return { ...found, sites: await countBatchesAt(context, found.sites) };
}
