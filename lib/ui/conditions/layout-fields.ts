import { getTranslations } from 'next-intl/server';
import {
  type ConditionTableLayout,
  columnRoles,
  dateOrders,
  decimalMarks,
  tableDelimiters,
} from '@/lib/growing/condition-table-layout';
import type { FieldSpec, FormState } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

/** How a table is written, as choices; `names` are those of its columns. */
export async function layoutFields(names: readonly string[]): Promise<FieldSpec[]> {
  const t = await getTranslations('conditions.layout');
  const choice = <T extends string>(
    name: string,
    values: readonly T[],
    word: (value: T) => string,
  ): FieldSpec => ({
    kind: 'select',
    name,
    label: sentenceCase(t(`fields.${name}` as Parameters<typeof t>[0])),
    options: values.map((value) => ({ value, label: word(value) })),
  });
  const roles = columnRoles.map((value) => ({ value, label: t(`role.${value}`) }));
  return [
    {
      kind: 'group',
      name: 'columns',
      legend: t('columns'),
      fields: names.map((name, index) => ({
        kind: 'select',
        name: `columns.${index}`,
        label: t('column', { number: index + 1, name }),
        options: roles,
      })),
    },
    choice('temperatureUnit', ['celsius', 'fahrenheit'] as const, (value) => t(`temperatureUnit.${value}`)),
    choice('dateOrder', dateOrders, (value) => t(`dateOrder.${value}`)),
    choice('decimal', decimalMarks, (value) => t(`decimal.${value}`)),
    choice('delimiter', tableDelimiters, (value) => t(`delimiter.${value}`)),
    { kind: 'whole', name: 'linesBefore', label: sentenceCase(t('fields.linesBefore')) },
  ];
}

/** A layout as the boxes of its form hold it. */
export function layoutValues(layout: ConditionTableLayout): FormState['values'] {
  const { delimiter, decimal, dateOrder, temperatureUnit, linesBefore, columns } = layout;
  return {
    ...{ delimiter, decimal, dateOrder, temperatureUnit },
    linesBefore: String(linesBefore),
    ...Object.fromEntries(columns.map((role, index) => [`columns.${index}`, role])),
  };
}
