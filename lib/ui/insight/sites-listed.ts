import type { SitePart } from '@/lib/analysis/site-question/sites-answer';
import { mostSitesListed } from '@/lib/base/most-sites-listed';
import { type PageOfList, pageOfList, perPage } from './page-of-list';

/**
 * A thousand rows nobody reads on a phone: of many sites those are listed of whom there is something to say, some a page.
 *
 * @param asked the page that an address names.
 */
export function sitesListed<Site extends Pick<SitePart, 'verdict'>>(
  sites: readonly Site[],
  asked: string | readonly string[] | undefined,
): PageOfList<Site> {
  if (sites.length <= mostSitesListed) return pageOfList(sites, asked, mostSitesListed);
  const told = sites.filter(({ verdict }) => verdict !== 'alike');
  return pageOfList(told, asked, perPage);
}
