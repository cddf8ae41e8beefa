import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { queryOfFilter } from '@/lib/analysis/comparison/comparison-filter.input';
import type { ComparisonPage } from '@/lib/analysis/comparison/read-comparison-page';
import { StepLinks } from '../page/step-links';

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
      <StepLinks
        {...(page > 1 ? { previous: { href: at(page - 1), label: t('previous') } } : {})}
        {...(page < pages ? { next: { href: at(page + 1), label: t('next') } } : {})}
      />
    </>
  );
}
