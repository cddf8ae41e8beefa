import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { queryOfQuestion } from '@/lib/analysis/adjusted/question-scope.input';
import { queryOfFilter } from '@/lib/analysis/comparison/comparison-filter.input';
import { readComparisonPage } from '@/lib/analysis/comparison/read-comparison-page';
import { ComparisonChart } from '@/lib/ui/comparison/comparison-chart';
import { comparisonChips } from '@/lib/ui/comparison/comparison-chips';
import { comparisonFields, comparisonValues } from '@/lib/ui/comparison/comparison-fields';
import { contaminationRange } from '@/lib/ui/comparison/comparison-sentence';
import { ComparisonTable } from '@/lib/ui/comparison/comparison-table';
import { DayProblemsSummary } from '@/lib/ui/comparison/day-problems-summary';
import { loadDayProblems } from '@/lib/ui/comparison/load-day-problems';
import { notHeldSentence } from '@/lib/ui/comparison/not-held-sentence';
import { NothingToCompare } from '@/lib/ui/comparison/nothing-to-compare';
import { placeNames } from '@/lib/ui/comparison/place-names';
import { scopeSentence } from '@/lib/ui/comparison/scope-sentence';
import { SitePager } from '@/lib/ui/comparison/site-pager';
import { yieldKind } from '@/lib/ui/comparison/yield-kind';
import { Figure } from '@/lib/ui/figure/figure';
import { loadFigureViews } from '@/lib/ui/figure/load-figure-views';
import { FilterForm } from '@/lib/ui/form/filter-form';
import { formatNumber } from '@/lib/ui/format/number-text';
import { asInside } from '@/lib/ui/insight/next-names';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';

export default async function ComparisonPage({ searchParams }: PageProps<'/comparison'>) {
  const actor = await requireActor('coordinator');
  const address = await searchParams;
  const page = await readAs(actor, (context) => readComparisonPage(context, address, new Date()));
  const t = await getTranslations('comparison');
  if (!page) return <NothingToCompare heading={t('heading')} />;
  const { choices, filter, problems, comparison } = page;
  const locale = await getLocale();
  const names = await placeNames(choices, actor.language);
  const view = await loadFigureViews(actor.networkTimeZone, actor.massUnit);
  const methods = names.sorted(comparison.methods);
  const sites = names.sorted(comparison.sites);
  const { container } = filter;
  const query = queryOfFilter(filter);
  const common = { container, timeZone: actor.networkTimeZone, massUnit: actor.massUnit };
  const kind = yieldKind(container);
  const range = kind === 'bed' ? undefined : contaminationRange(methods);
  const days = await loadDayProblems({ problems, address }, filter, 'comparison.filter');
  const notHeld = range === undefined ? '' : await notHeldSentence(methods, names);
  const questionOf = (question: 'methods' | 'sites') =>
    `/questions/${question}?${queryOfQuestion({ ...filter, level: 'none' })}` as Route;
  const rowsOf = (query: string) => `/comparison/rows?${query}` as Route;
  return (
    <>
      <DayProblemsSummary errors={days.errors} />
      <Heading text={t('heading')} failed={days.errors.length > 0} />
      <p className="lead">{await scopeSentence(page, actor.language, locale)}</p>
      {days.shown === undefined ? null : <p className="notice">{days.shown}</p>}
      <FilterForm
        action={'/comparison' as Route}
        fields={await comparisonFields(choices, actor.language, filter.site)}
        values={{ ...comparisonValues(filter), ...days.values }}
        errors={days.errors}
        chips={comparisonChips(filter, names)}
      />
      {range === undefined ? null : (
        <p className="answer-sentence">
          {t('answer', {
            low: formatNumber(range.low, locale, 1),
            high: formatNumber(range.high, locale, 1),
            lowest: asInside(names.methodName(range.lowest)),
            highest: asInside(names.methodName(range.highest)),
          })}{' '}
          {filter.site === undefined ? (
            <>
              {t('answerSites')} <Link href={questionOf('methods')}>{t('toMethods')}</Link>
            </>
          ) : null}
        </p>
      )}
      {notHeld === '' ? null : <p>{notHeld}</p>}
      <div className="figures">
        <Figure
          label={t('contaminationTotal')}
          view={view(comparison.total.contamination)}
          rows={rowsOf(comparison.total.contamination.rowsQuery)}
        />
        <Figure
          label={t(`yieldTotal.${kind}`)}
          view={view(comparison.total.yield)}
          rows={rowsOf(comparison.total.yield.rowsQuery)}
        />
      </div>
      <p>{t('dates')}</p>
      <h2>{t('byMethod')}</h2>
      <p>
        {t('methodNote')} <Link href={questionOf('methods')}>{t('toMethods')}</Link>
      </p>
      {kind === 'bed' ? (
        <p>{t('bedsCounted')}</p>
      ) : (
        <ComparisonChart
          title={t('contaminationChart')}
          reading={t('contaminationReading')}
          rows={methods}
          nameOf={(row) => names.methodName(row.method)}
          figureOf={(row) => row.contamination}
          timeZone={actor.networkTimeZone}
          massUnit={actor.massUnit}
        />
      )}
      <ComparisonChart
        title={t(`yieldChart.${kind}`)}
        reading={t(`yieldReading.${kind}`)}
        rows={methods}
        nameOf={(row) => names.methodName(row.method)}
        figureOf={(row) => row.yield}
        timeZone={actor.networkTimeZone}
        massUnit={actor.massUnit}
      />
      <ComparisonTable
        caption={t('methodCaption')}
        firstHeader={t('columns.method')}
        rows={methods}
        nameOf={(row) => names.methodName(row.method)}
        {...common}
      />
      {kind === 'log' ? <p>{t('logLifeNote')}</p> : null}
      <p className="quiet">{t('starNote')}</p>
      <h2>{t('bySite')}</h2>
      <p>
        {t('siteNote')} <Link href={questionOf('sites')}>{t('toSitesQuestion')}</Link>
      </p>
      <SitePager {...page} path="/comparison" />
      <ComparisonTable
        caption={t('siteCaption')}
        firstHeader={t('columns.site')}
        rows={sites}
        nameOf={(row) => names.siteName(row.site)}
        {...common}
      />
      <p>
        <Link href={`/comparison/methods-at-sites?${query}&page=${page.page}` as Route}>{t('byCell')}</Link>
      </p>
      <SitePager {...page} path="/comparison" />
      <p className="no-print">
        <a href={`/comparison/csv?${query}`}>{t('csv')}</a>
      </p>
    </>
  );
}
