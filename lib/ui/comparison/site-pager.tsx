import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { queryOfFilter } from '@/lib/analysis/comparison/comparison-filter.input';
import type { ComparisonPage } from '@/lib/analysis/comparison/read-comparison-page';
import { Link } from '../page/link';

type Props = Pick<ComparisonPage, 'filter' | 'page' | 'pages' | 'siteCount' | 'perPage'> & {
  /** The page itself. */
  readonly path: '/comparison' | '/comparison/methods-at-sites';
};

/** Which sites have rows of their own here, and the way to the others; nothing where all are here. */
export async function SitePager({ filter, page, pages, siteCount, perPage, path }: Props) {
  if (pages === 1) return null;
  const t = await getTranslations('comparison.sitePager');
  const at = (number: number) => `${path}?${queryOfFilter(filter)}&page=${number}` as Route;
  return (
    <>
      <p>
        {t('shown', {
          first: (page - 1) * perPage + 1,
          last: Math.min(page * perPage, siteCount),
          count: siteCount,
        })}
        {path === '/comparison' ? ` ${t('totals')}` : null}
      </p>
      <p className="chips no-print">
        {page > 1 ? (
          <Link className="button button-plain" href={at(page - 1)} rel="prev">
            {t('previous')}
          </Link>
        ) : null}
        {page < pages ? (
          <Link className="button button-plain" href={at(page + 1)} rel="next">
            {t('next')}
          </Link>
        ) : null}
      </p>
    </>
  );
}
