import { getLocale, getTranslations } from 'next-intl/server';
import type { ProgrammeInPeriod } from '@/lib/analysis/programme/read-programme';
import type { MassUnit } from '@/lib/database/generated/enums';
import { formatTotalMass } from '@/lib/growing/format-quantity';
import { formatDate } from '../format/date-text';
import { formatMoney } from '../format/money-text';
import { DefinitionList } from '../page/definition-list';
import { AnswersTable } from './answers-table';

type Props = {
  readonly programme: ProgrammeInPeriod;
  readonly period: { readonly from: string; readonly to: string };
  readonly massUnit: MassUnit;
};

/** What the programme amounts to over a period: people each once, what was sold, what was taken up, and the answers. */
export async function ProgrammeYear({ programme, period, massUnit }: Props) {
  const t = await getTranslations('programme.year');
  const words = await getTranslations('vocabulary.practiceKind');
  const locale = await getLocale();
  const { trainings, sales, practices, answers } = programme;
  const dates = { from: formatDate(period.from, locale), to: formatDate(period.to, locale) };
  const taken = practices.filter(({ adoptedAt }) => adoptedAt.length > 0);
  return (
    <section>
      <h2>{t('heading')}</h2>
      <p>{t('scope', dates)}</p>
      <DefinitionList
        items={[
          {
            label: t('trainings'),
            value: t('trainingsValue', { count: trainings.trainings, attendances: trainings.attendances }),
          },
          {
            label: t('people'),
            value: t('peopleValue', { people: trainings.people, unnamed: trainings.unnamedHeads }),
          },
          ...sales.map(({ currency, amountMinor, grams, sales: count }) => ({
            label: t('sales', { currency }),
            value: t('salesValue', {
              amount: formatMoney({ minor: amountMinor, currency }, locale),
              mass: formatTotalMass(grams, massUnit, locale),
              count,
            }),
          })),
          ...taken.map(({ practice, adoptedAt }) => ({
            label: words(practice),
            value: t('takenUp', { sites: adoptedAt.length }),
          })),
        ]}
      />
      {trainings.leftOutWithoutConsent === 0 ? null : (
        <p className="quiet">{t('leftOut', { count: trainings.leftOutWithoutConsent })}</p>
      )}
      {answers.length === 0 ? null : <AnswersTable questions={answers} />}
    </section>
  );
}
