import type { SitePart } from '@/lib/analysis/site-question/sites-answer';
import { mostSitesListed } from '@/lib/base/most-sites-listed';

const perPage = 25;

export type SitesListed<Site> = {
  readonly rows: readonly Site[];
  /** How many are listed on all pages. */
  readonly count: number;
  /** From 1. */
  readonly page: number;
  readonly pages: number;
  readonly perPage: number;
};

/**
 * A thousand rows nobody reads on a phone: of many sites those are listed of whom there is something to say, some a page.
 *
 * @param asked the page that an address names; one that is not there is the nearest, and no number the first.
 */
export function sitesListed<Site extends Pick<SitePart, 'verdict'>>(
  sites: readonly Site[],
  asked: string | readonly string[] | undefined,
): SitesListed<Site> {
  if (sites.length <= mostSitesListed)
    return { rows: sites, count: sites.length, page: 1, pages: 1, perPage: sites.length };
  return pageOfSites(
    sites.filter(({ verdict }) => verdict !== 'alike'),
    asked,
  );
}

/** The same of a list as it stands. */
export function pageOfSites<Site>(
  sites: readonly Site[],
  asked: string | readonly string[] | undefined,
): SitesListed<Site> {
  const pages = Math.max(1, Math.ceil(sites.length / perPage));
  const number = typeof asked === 'string' && /^\d{1,6}$/.test(asked) ? Number(asked) : 1;
  const page = Math.min(Math.max(1, number), pages);
  const rows = sites.slice((page - 1) * perPage, page * perPage);
  return { rows, count: sites.length, page, pages, perPage };
}
