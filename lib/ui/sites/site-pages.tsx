import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { FoundSites } from '@/lib/records/site/find-sites.query';
import type { SiteSearch } from '@/lib/records/site/site-search.input';
import { StepLinks } from '../page/step-links';
import { addressWith } from '../table/address-with';

type Props = {
  readonly path: '/sites' | '/sites/choose';
  readonly search: SiteSearch;
  readonly found: Pick<FoundSites, 'total' | 'page' | 'pages'>;
  /** What the address holds besides. */
  readonly carried?: Readonly<Record<string, string>>;
};

/** Which page of how many sites this is, and the way to the others; nothing where all are here. */
export async function SitePages({ path, search, found: { total, page, pages }, carried = {} }: Props) {
  if (pages === 1) return null;
  const t = await getTranslations('sites.search');
  const at = (number: number) =>
    addressWith(path, { ...carried, siteName: search.siteName ?? '', sitePage: String(number) }, {}) as Route;
  return (
    <>
      <p>{t('pageOf', { page, pages, total })}</p>
      <StepLinks
        {...(page > 1 ? { previous: { href: at(page - 1), label: t('before') } } : {})}
        {...(page < pages ? { next: { href: at(page + 1), label: t('after') } } : {})}
      />
    </>
  );
}
