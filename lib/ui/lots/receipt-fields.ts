import { getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { massUnits } from '../form/mass-units';
import { sentenceCase } from '../format/sentence-case';

type Options = {
  /** The hidden field that names the lot. */
  readonly lotField: 'substrateLotId' | 'spawnLotId';
  readonly sites: readonly ChoiceOption[];
  readonly days: readonly ChoiceOption[];
  readonly massUnit: MassUnit;
};

export async function receiptFields({ lotField, sites, days, massUnit }: Options): Promise<FieldSpec[]> {
  const t = await getTranslations('lots');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  return [
    { kind: 'select', name: 'siteId', label: label('fields.siteId'), options: sites },
    { kind: 'date', name: 'receivedOn', label: label('fields.receivedOn'), quick: days },
    { kind: 'mass', name: 'mass', label: label('fields.mass'), units: massUnits(massUnit) },
    { kind: 'paragraph', name: 'note', label: label('fields.note'), optional: true },
    { kind: 'hidden', name: lotField },
    { kind: 'hidden', name: 'id' },
  ];
}
