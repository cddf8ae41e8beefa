import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { readCosts } from '@/lib/analysis/costs/read-costs';
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
  const answer = await readAs(actor, (context) => readCosts(context, address, new Date()));
  const { period, currency } = answer;
  const words = await costsWords(answer, actor);
  const { t, locale } = words;
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
      <CostsAnswerView answer={answer} words={words} />
      <p className="no-print">
        <Link href={`${path}?from=${period.from}&to=${period.to}` as Route}>{insight('fit.reproduce')}</Link>
      </p>
    </>
  );
}
