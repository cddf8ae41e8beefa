import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { askCosts } from '@/lib/analysis/costs/ask-costs';
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
  const scope = asked.kind === 'answer' ? asked.answer : asked.scope;
  const { period, currency } = scope;
  const t = await getTranslations('insight.costs');
  const locale = await getLocale();
  const insight = await getTranslations('insight');
  return (
    <>
      <Heading text={insight('index.costs', { unit: actor.massUnit })} />
      <p className="lead">
        {t('scope', { from: formatDate(period.from, locale), to: formatDate(period.to, locale), currency })}
      </p>
      <FilterForm
        action={path as Route}
        fields={[
          { kind: 'date', name: 'from', label: t('from'), quick: [] },
          { kind: 'date', name: 'to', label: t('to'), quick: [] },
        ]}
        values={{ ...dateValues('from', period.from), ...dateValues('to', period.to) }}
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
