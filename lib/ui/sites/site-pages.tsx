import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { FoundSites } from '@/lib/records/site/find-sites.query';
import type { SiteSearch } from '@/lib/records/site/site-search.input';
import { Link } from '../page/link';
import { addressWith } from '../table/address-with';

type Props = {
  readonly path: '/sites' | '/sites/choose';
  readonly search: SiteSearch;
  readonly found: Pick<FoundSites, 'total' | 'page' | 'pages'>;
  readonly next?: string;
};

/** Which page of how many sites this is, and the way to the others; nothing where all are here. */
export async function SitePages({ path, search, found: { total, page, pages }, next }: Props) {
  if (pages === 1) return null;
  const t = await getTranslations('sites.search');
  const at = (number: number) =>
    addressWith(path, { next, siteName: search.siteName ?? '', sitePage: String(number) }, {}) as Route;
  return (
    <>
      <p>{t('pageOf', { page, pages, total })}</p>
      <p className="chips no-print">
        {page > 1 ? (
          <Link className="button button-plain" href={at(page - 1)} rel="prev">
            {t('before')}
          </Link>
        ) : null}
        {page < pages ? (
          <Link className="button button-plain" href={at(page + 1)} rel="next">
            {t('after')}
          </Link>
        ) : null}
      </p>
    </>
  );
}
