import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { queryOfFilter } from '@/lib/analysis/comparison/comparison-filter.input';
import { readComparisonPage } from '@/lib/analysis/comparison/read-comparison-page';
import { ComparisonTable } from '@/lib/ui/comparison/comparison-table';
import { DayProblemsNotice } from '@/lib/ui/comparison/day-problems-notice';
import { loadDayProblems } from '@/lib/ui/comparison/load-day-problems';
import { NothingToCompare } from '@/lib/ui/comparison/nothing-to-compare';
import { placeNames } from '@/lib/ui/comparison/place-names';
import { scopeSentence } from '@/lib/ui/comparison/scope-sentence';
import { SitePager } from '@/lib/ui/comparison/site-pager';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';

export default async function MethodsAtSitesPage({
  searchParams,
}: PageProps<'/comparison/methods-at-sites'>) {
  const actor = await requireActor('coordinator');
  const address = await searchParams;
  const page = await readAs(actor, (context) => readComparisonPage(context, address, new Date()));
  const t = await getTranslations('comparison');
  if (!page) return <NothingToCompare heading={t('byCell')} />;
  const { choices, filter, comparison } = page;
  const names = await placeNames(choices, actor.language);
  const days = await loadDayProblems({ ...page, address }, filter, 'comparison.filter');
  const query = queryOfFilter(filter);
  return (
    <>
      <Heading text={t('byCell')} />
      <p className="lead">{await scopeSentence(page, actor.language, await getLocale())}</p>
      <DayProblemsNotice days={days} />
      <p>
        {t('cellNote')} <Link href={`/comparison?${query}` as Route}>{t('back')}</Link>
      </p>
      <SitePager {...page} path="/comparison/methods-at-sites" />
      <ComparisonTable
        caption={t('cellCaption')}
        firstHeader={t('columns.site')}
        rows={names.sorted(comparison.cells)}
        nameOf={(row) => names.siteName(row.site)}
        groupOf={(row) => names.methodName(row.method)}
        container={filter.container}
        timeZone={actor.networkTimeZone}
        massUnit={actor.massUnit}
      />
      <p className="quiet">{t('starNote')}</p>
      <SitePager {...page} path="/comparison/methods-at-sites" />
    </>
  );
}
