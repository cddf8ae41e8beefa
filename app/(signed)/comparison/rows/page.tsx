import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { queryOfFilter } from '@/lib/analysis/comparison/comparison-filter.input';
import { readRowsBehind } from '@/lib/analysis/comparison/read-rows-behind';
import { DayProblemsNotice } from '@/lib/ui/comparison/day-problems-notice';
import { loadDayProblems } from '@/lib/ui/comparison/load-day-problems';
import { NothingToCompare } from '@/lib/ui/comparison/nothing-to-compare';
import { placeNames } from '@/lib/ui/comparison/place-names';
import { RowsTable } from '@/lib/ui/comparison/rows-table';
import { scopeSentence } from '@/lib/ui/comparison/scope-sentence';
import { yieldKind } from '@/lib/ui/comparison/yield-kind';
import { Figure } from '@/lib/ui/figure/figure';
import { loadFigureViews } from '@/lib/ui/figure/load-figure-views';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { Pager } from '@/lib/ui/page/pager';

export default async function RowsBehindPage({ searchParams }: PageProps<'/comparison/rows'>) {
  const actor = await requireActor('coordinator');
  const address = await searchParams;
  const behind = await readAs(actor, (context) => readRowsBehind(context, address, new Date()));
  const t = await getTranslations('comparison');
  if (!behind) return <NothingToCompare heading={t('heading')} />;
  const { choices, filter, problems, figures, rows, total, perPage, newer, older } = behind;
  const locale = await getLocale();
  const names = await placeNames(choices, actor.language);
  const view = await loadFigureViews(actor.networkTimeZone, actor.massUnit);
  const days = await loadDayProblems({ problems, address }, filter, 'comparison.filter');
  const kind = yieldKind(filter.container);
  const { method: _method, site: _site, ...all } = filter;
  const pageAt = (place: string) => `/comparison/rows?${queryOfFilter(filter)}&${place}` as Route;
  return (
    <>
      <Heading
        text={t('rowsHeading', {
          method: names.methodName(filter.method),
          site: names.siteName(filter.site),
        })}
      />
      <p>{await scopeSentence(behind, actor.language, locale)}</p>
      <DayProblemsNotice days={days} />
      <div className="figures">
        <Figure label={t('contaminationTotal')} view={view(figures.contamination)} />
        <Figure label={t('columns.anyTime')} view={view(figures.contaminationAtAnyTime)} />
        <Figure label={t(`yieldName.${kind}`)} view={view(figures.yield)} />
        <Figure label={t('columns.cropped')} view={view(figures.yieldOfCropped)} />
        {figures.logLifeBe === undefined ? null : (
          <Figure label={t('columns.logLife')} view={view(figures.logLifeBe)} />
        )}
      </div>
      <p>{t('rowsNote', { total, perPage })}</p>
      <RowsTable
        rows={rows}
        names={names}
        container={filter.container}
        timeZone={actor.networkTimeZone}
        massUnit={actor.massUnit}
      />
      <Pager
        newer={newer === undefined ? undefined : pageAt(`before=${newer}`)}
        older={older === undefined ? undefined : pageAt(`after=${older}`)}
      />
      <p className="no-print">
        <Link href={`/comparison?${queryOfFilter({ ...all, method: undefined, site: undefined })}` as Route}>
          {t('back')}
        </Link>
      </p>
    </>
  );
}
