import { getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import type { FieldSpec } from '../form/field-spec';
import { massUnits } from '../form/mass-units';
import { sentenceCase } from '../format/sentence-case';

const hidden: readonly FieldSpec[] = [
  { kind: 'hidden', name: 'of' },
  { kind: 'hidden', name: 'about' },
  { kind: 'hidden', name: 'id' },
  { kind: 'hidden', name: 'revision' },
];

async function labels() {
  const t = await getTranslations('costs');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  return { t, label };
}

type Standing = { readonly currency: string; readonly changes: boolean };

/** What a batch or a treatment run cost; a change also asks why. */
export async function costFields({ currency, changes }: Standing): Promise<FieldSpec[]> {
  const { t, label } = await labels();
  const money = (['supplies', 'fuel', 'water'] as const).map(
    (name): FieldSpec => ({
      kind: 'decimal',
      name,
      label: label(`fields.${name}`),
      suffix: currency,
      optional: true,
    }),
  );
  return [
    ...hidden,
    {
      kind: 'whole',
      name: 'labourMinutes',
      label: label('fields.labourMinutes'),
      hint: t('hints.labourMinutes'),
      suffix: 'min',
      optional: true,
    },
    ...money,
    { kind: 'paragraph', name: 'note', label: label('fields.note'), optional: true },
    ...(changes ? [reasonField(label('fields.reason'))] : []),
  ];
}

/** What was paid for so much of a lot. */
export async function lotPriceFields(
  { currency, changes }: Standing,
  massUnit: MassUnit,
): Promise<FieldSpec[]> {
  const { label } = await labels();
  return [
    ...hidden,
    { kind: 'decimal', name: 'paid', label: label('fields.paid'), suffix: currency },
    { kind: 'mass', name: 'mass', label: label('fields.mass'), units: massUnits(massUnit) },
    ...(changes ? [reasonField(label('fields.reason'))] : []),
  ];
}

function reasonField(label: string): FieldSpec {
  return { kind: 'text', name: 'reason', label };
}
