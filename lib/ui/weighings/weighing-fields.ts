import { getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import { destinations, trimStates } from '@/lib/growing/vocabulary';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { massUnits } from '../form/mass-units';
import { sentenceCase } from '../format/sentence-case';
import { forcedFlushField } from './forced-flush-field';

type Options = {
  readonly kind: 'record' | 'correct';
  readonly massUnit: MassUnit;
  readonly batches: readonly ChoiceOption[];
  readonly days: readonly ChoiceOption[];
  /** How many rows for further batches of the same crate. */
  readonly furtherRows: number;
  /** Rows whose batch is of a kind whose flushes are forced at times. */
  readonly forcedRows: readonly number[];
};

/** The form of a weighing: batch, mass and day at once; the rest folded until wanted. */
export async function weighingFields({
  kind,
  massUnit,
  batches,
  days,
  furtherRows,
  forcedRows,
}: Options): Promise<FieldSpec[]> {
  const t = await getTranslations('weighings');
  const words = await getTranslations('vocabulary');
  const common = await getTranslations('common');
  const units = massUnits(massUnit);
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const line = (index: number): FieldSpec[] => [
    {
      kind: 'select',
      name: `lines.${index}.batchId`,
      label: index === 0 ? label('fields.lines.batchId') : t('furtherBatch', { number: index + 1 }),
      options: batches,
      emptyLabel: index === 0 ? common('chooseOne') : common('none'),
      ...(index === 0 ? {} : { optional: true }),
    },
  ];
  const further = Array.from({ length: furtherRows }, (_, row): FieldSpec[] => [
    ...line(row + 1),
    {
      kind: 'mass',
      name: `lines.${row + 1}.fresh`,
      label: label('fields.lines.fresh'),
      units,
      optional: true,
    },
    { kind: 'whole', name: `lines.${row + 1}.flush`, label: label('fields.lines.flush'), optional: true },
  ]);
  return [
    ...line(0),
    { kind: 'mass', name: 'fresh', label: label('fields.fresh'), units },
    { kind: 'date', name: 'weighedOn', label: label('fields.weighedOn'), quick: days },
    {
      kind: 'whole',
      name: 'lines.0.flush',
      label: label('fields.lines.flush'),
      hint: t('hints.flush'),
      optional: true,
    },
    ...(await Promise.all(forcedRows.map((row) => forcedFlushField(row)))),
    {
      kind: 'group',
      name: 'where',
      legend: t('groups.destinations'),
      hint: t('hints.destinations'),
      folded: true,
      fields: destinations.map((destination) => ({
        kind: 'mass',
        name: destination,
        label: words(`destination.${destination}`),
        units,
        optional: true,
      })),
    },
    {
      kind: 'group',
      name: 'crate',
      legend: t('groups.crate'),
      hint: t('hints.crate'),
      folded: true,
      fields: [
        { kind: 'mass', name: 'lines.0.fresh', label: t('firstShare'), units, optional: true },
        ...further.flat(),
      ],
    },
    {
      kind: 'group',
      name: 'details',
      legend: common('more'),
      folded: true,
      fields: [
        {
          kind: 'radio',
          name: 'trimState',
          label: label('fields.trimState'),
          options: trimStates.map((value) => ({ value, label: words(`trimState.${value}`) })),
        },
        { kind: 'text', name: 'grade', label: label('fields.grade'), optional: true, width: 'short' },
        { kind: 'paragraph', name: 'note', label: label('fields.note'), optional: true },
      ],
    },
    ...(kind === 'correct'
      ? ([
          { kind: 'hidden', name: 'id' },
          { kind: 'hidden', name: 'revision' },
          { kind: 'text', name: 'reason', label: label('fields.reason') },
        ] satisfies FieldSpec[])
      : ([
          {
            kind: 'caution',
            name: 'care',
            title: t('caution.title'),
            lines: [t('caution.spores'), t('caution.eating'), common('caution.rule')],
          },
          { kind: 'hidden', name: 'id' },
        ] satisfies FieldSpec[])),
  ];
}
