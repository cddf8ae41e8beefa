import { getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import { spawnForms } from '@/lib/growing/vocabulary';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { massUnits } from '../form/mass-units';
import { sentenceCase } from '../format/sentence-case';
import { correctionFields } from '../history/correction-fields';

type Options = {
  readonly kind: 'add' | 'correct';
  readonly species: readonly ChoiceOption[];
  readonly parents: readonly ChoiceOption[];
  readonly days: readonly ChoiceOption[];
  readonly massUnit: MassUnit;
};

export async function spawnLotFields({
  kind,
  species,
  parents,
  days,
  massUnit,
}: Options): Promise<FieldSpec[]> {
  const t = await getTranslations('lots');
  const words = await getTranslations('vocabulary');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  return [
    { kind: 'select', name: 'speciesId', label: label('fields.speciesId'), options: species },
    { kind: 'text', name: 'strain', label: label('fields.strain'), optional: true },
    {
      kind: 'radio',
      name: 'form',
      label: label('fields.form'),
      options: spawnForms.map((value) => ({ value, label: words(`spawnForm.${value}`) })),
    },
    { kind: 'text', name: 'maker', label: label('fields.maker'), hint: t('hints.maker'), optional: true },
    { kind: 'text', name: 'makerCode', label: label('fields.makerCode'), optional: true, width: 'short' },
    { kind: 'date', name: 'madeOn', label: label('fields.madeOn'), quick: [], optional: true },
    { kind: 'date', name: 'receivedOn', label: label('fields.receivedOn'), quick: days, optional: true },
    {
      kind: 'mass',
      name: 'received',
      label: label('fields.received'),
      units: massUnits(massUnit),
      optional: true,
    },
    {
      kind: 'group',
      name: 'descent',
      legend: t('groups.descent'),
      hint: t('hints.descent'),
      folded: true,
      fields: [
        {
          kind: 'select',
          name: 'parentLotId',
          label: label('fields.parentLotId'),
          options: parents,
          optional: true,
        },
        { kind: 'text', name: 'cultureName', label: label('fields.cultureName'), optional: true },
      ],
    },
    {
      kind: 'text',
      name: 'code',
      label: label('fields.code'),
      hint: t('hints.code'),
      optional: true,
      width: 'short',
    },
    { kind: 'paragraph', name: 'note', label: label('fields.note'), optional: true },
    ...(kind === 'correct' ? await correctionFields() : [{ kind: 'hidden', name: 'id' } as const]),
  ];
}
