import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteChoice } from './site-choice.input';
import type { SiteSearch } from './site-search.input';
import { type SiteView, siteView } from './site-view';
import { siteWhere } from './site-where';

const perPage = 50;

export type FoundSites<Site = SiteView> = {
  /** By name. */
  readonly sites: readonly Site[];
  /** Of all pages. */
  readonly total: number;
  /** From 1; the last one where a later one is asked for. */
  readonly page: number;
  readonly pages: number;
};

/** A page of the sites that the actor may see and that have not left: all, or those whose name or code holds a text. */
export async function findSites({ db }: ReadContext, search: SiteSearch | SiteChoice): Promise<FoundSites> {
  const where = siteWhere(search);
  const total = await db.site.count({ where });
  const pages = Math.max(1, Math.ceil(total / perPage));
  const page = Math.min(search.sitePage, pages);
  const rows = await db.site.findMany({
    where,
    orderBy: [{ name: 'asc' }, { id: 'asc' }],
    skip: (page - 1) * perPage,
    take: perPage,
  });
  return { sites: rows.map(siteView), total, page, pages };
}
