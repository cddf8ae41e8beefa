import { getTranslations } from 'next-intl/server';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

/** The days that a report is about, and those it is compared with. */
export async function reportDayFields(): Promise<FieldSpec[]> {
  const t = await getTranslations('report');
  const date = (name: 'from' | 'to' | 'baselineFrom' | 'baselineTo'): FieldSpec => ({
    kind: 'date',
    name,
    label: sentenceCase(t(`fields.${name}`)),
    quick: [],
    ...(name.startsWith('baseline') ? { optional: true } : {}),
  });
  return [
    date('from'),
    date('to'),
    {
      kind: 'group',
      name: 'baseline',
      legend: t('baselineLegend'),
      hint: t('baselineHint'),
      fields: [date('baselineFrom'), date('baselineTo')],
    },
  ];
}
