import { getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import { moistureSources } from '@/lib/growing/vocabulary';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { massUnits } from '../form/mass-units';
import { lengthUnits } from '../form/person-units';
import { sentenceCase } from '../format/sentence-case';
import { correctionFields } from '../history/correction-fields';

type Options = {
  readonly kind: 'add' | 'correct';
  readonly materials: readonly ChoiceOption[];
  readonly days: readonly ChoiceOption[];
  readonly massUnit: MassUnit;
};

export async function substrateLotFields({ kind, materials, days, massUnit }: Options): Promise<FieldSpec[]> {
  const t = await getTranslations('lots');
  const words = await getTranslations('vocabulary');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  return [
    { kind: 'select', name: 'materialId', label: label('fields.materialId'), options: materials },
    {
      kind: 'text',
      name: 'sourceName',
      label: label('fields.sourceName'),
      hint: t('hints.sourceName'),
      optional: true,
    },
    { kind: 'date', name: 'receivedOn', label: label('fields.receivedOn'), quick: days },
    {
      kind: 'mass',
      name: 'received',
      label: label('fields.received'),
      units: massUnits(massUnit),
      optional: true,
    },
    {
      kind: 'radio',
      name: 'moistureSource',
      label: label('fields.moistureSource'),
      options: moistureSources.map((value) => ({
        value,
        label: words(`moistureSource.${value}`),
        hint: t(`moistureHint.${value}`),
      })),
    },
    {
      kind: 'decimal',
      name: 'moisturePercent',
      label: label('fields.moisturePercent'),
      hint: t('hints.moisturePercent'),
      suffix: '%',
      optional: true,
    },
    {
      kind: 'length',
      name: 'cutLength',
      label: label('fields.cutLength'),
      hint: t('hints.cutLength'),
      units: lengthUnits(massUnit),
      optional: true,
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
