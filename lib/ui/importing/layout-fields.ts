import { getTranslations } from 'next-intl/server';
import { dateOrders, decimalMarks, tableDelimiters } from '@/lib/growing/condition-table-layout';
import { tableEncodings } from '@/lib/growing/record-table-layout';
import type { IntakeView } from '@/lib/intake/table/view-file';
import type { FieldSpec, FormState } from '../form/field-spec';
import { columnName } from './column-name';
import { givenFields, givenValues } from './given-fields';

const examplesShown = 3;
const exampleLength = 24;

/** How a table is written and what its columns hold, as fields of a form. */
export async function layoutFields({ layout, offers, sample, asked }: IntakeView): Promise<FieldSpec[]> {
  const t = await getTranslations('import');
  const options = offers.map(({ name }) => ({ value: name, label: t(`fields.${name as 'batch'}`) }));
  const given = await givenFields(asked, 'given', t('given.perRow'));
  const unnamed = (letter: string) => t('understood.unnamed', { letter });
  const columns = layout.columns.flatMap((column, index): FieldSpec[] => {
    const name = columnName(layout.headers, index, unnamed);
    const cells = sample.flatMap(({ cells }) => (cells[index]?.trim() ? [cells[index].trim()] : []));
    const example = cells
      .slice(0, examplesShown)
      .map((cell) => t('understood.quoted', { cell: cell.slice(0, exampleLength) }))
      .join(', ');
    const hint = [
      ...(column.weak ? [t('understood.weak')] : []),
      ...(example === '' ? [] : [t('understood.example', { cells: example })]),
    ].join(' ');
    const units = offers.find((offer) => offer.name === column.field)?.units ?? [];
    return [
      {
        kind: 'select',
        name: `columns.${index}`,
        label: t('understood.column', { name }),
        ...(hint === '' ? {} : { hint }),
        emptyLabel: t('understood.skip'),
        options,
      },
      ...(units.length === 0
        ? []
        : [
            {
              kind: 'select' as const,
              name: `units.${index}`,
              label: t('understood.unit', { name }),
              options: units.map((unit) => ({ value: unit, label: t(`unit.${unit}`) })),
            },
          ]),
    ];
  });
  const select = <V extends string>(
    name: 'encoding' | 'delimiter' | 'decimal' | 'dateOrder',
    values: readonly V[],
    word: (value: V) => string,
  ): FieldSpec => ({
    kind: 'select',
    name,
    label: t(`understood.${name}`),
    options: values.map((value) => ({ value, label: word(value) })),
  });
  const ofText = [
    select('encoding', tableEncodings, (value) => t(`encoding.${value}`)),
    select('delimiter', tableDelimiters, (value) => t(`delimiter.${value}`)),
  ];
  const ofWorkbook: FieldSpec[] = [
    {
      kind: 'select',
      name: 'sheet',
      label: t('understood.sheet'),
      options: layout.sheets.map((label, index) => ({ value: String(index), label })),
    },
  ];
  return [
    { kind: 'group', name: 'columnsGroup', legend: t('understood.columns'), fields: columns },
    ...(given.length === 0
      ? []
      : [
          {
            kind: 'group' as const,
            name: 'givenGroup',
            legend: t('given.heading'),
            hint: t('given.intro'),
            fields: given,
          },
        ]),
    select('decimal', decimalMarks, (value) => t(`decimal.${value}`)),
    select('dateOrder', dateOrders, (value) => t(`dateOrder.${value}`)),
    ...(layout.format === 'csv' ? ofText : ofWorkbook),
    {
      kind: 'whole',
      name: 'headerLine',
      label: t('understood.headerLine'),
      hint: t('understood.headerHint'),
    },
  ];
}

export function layoutValues({ layout, asked }: Pick<IntakeView, 'layout' | 'asked'>): FormState['values'] {
  const { encoding, delimiter, decimal, dateOrder, sheet, headerLine } = layout;
  return {
    ...{ encoding, delimiter, decimal, dateOrder },
    sheet: String(sheet),
    headerLine: String(headerLine),
    ...givenValues(asked, 'given', layout.given),
    ...Object.fromEntries(
      layout.columns.flatMap(({ field, unit }, index) => [
        [`columns.${index}`, field ?? ''],
        [`units.${index}`, unit ?? ''],
      ]),
    ),
  };
}
