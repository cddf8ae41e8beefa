import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { askCosts } from '@/lib/analysis/costs/ask-costs';
import { DayProblemsSummary } from '@/lib/ui/comparison/day-problems-summary';
import { loadDayProblems } from '@/lib/ui/comparison/load-day-problems';
import { CostsAnswerView } from '@/lib/ui/costs/costs-answer';
import { costsWords } from '@/lib/ui/costs/costs-words';
import { dateValues } from '@/lib/ui/form/date-values';
import { FilterForm } from '@/lib/ui/form/filter-form';
import { formatDate } from '@/lib/ui/format/date-text';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';

const path = '/questions/costs';

export default async function CostsQuestionPage({ searchParams }: PageProps<'/questions/costs'>) {
  const actor = await requireActor('coordinator');
  const address = await searchParams;
  const asked = await readAs(actor, (context) => askCosts(context, address, new Date()));
  const { period, problems, currency } = asked.scope;
  const t = await getTranslations('insight.costs');
  const locale = await getLocale();
  const days = await loadDayProblems({ problems, address }, period, 'costs.filter');
  const insight = await getTranslations('insight');
  return (
    <>
      <DayProblemsSummary errors={days.errors} />
      <Heading text={insight('index.costs', { unit: actor.massUnit })} failed={days.errors.length > 0} />
      <p className="lead">
        {t('scope', { from: formatDate(period.from, locale), to: formatDate(period.to, locale), currency })}
      </p>
      {days.shown === undefined ? null : <p className="notice">{days.shown}</p>}
      <FilterForm
        action={path as Route}
        fields={[
          { kind: 'date', name: 'from', label: t('from'), quick: [] },
          { kind: 'date', name: 'to', label: t('to'), quick: [] },
        ]}
        values={{ ...dateValues('from', period.from), ...dateValues('to', period.to), ...days.values }}
        errors={days.errors}
        chips={[]}
      />
      {asked.kind === 'answer' ? (
        <CostsAnswerView answer={asked.answer} words={await costsWords(asked.answer, actor)} />
      ) : (
        <p className="answer-sentence">{t('tooMany', { most: asked.most })}</p>
      )}
      <p className="no-print">
        <Link href={`${path}?from=${period.from}&to=${period.to}` as Route}>{insight('fit.reproduce')}</Link>
      </p>
    </>
  );
}
