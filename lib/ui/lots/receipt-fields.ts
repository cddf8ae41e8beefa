import { getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { massUnits } from '../form/mass-units';
import { sentenceCase } from '../format/sentence-case';
import { type SiteBox, siteSelect } from '../sites/site-select';

type Options = {
  /** The hidden field that names the lot. */
  readonly lotField: 'substrateLotId' | 'spawnLotId';
  readonly site: SiteBox;
  readonly days: readonly ChoiceOption[];
  readonly massUnit: MassUnit;
};

export async function receiptFields({ lotField, site, days, massUnit }: Options): Promise<FieldSpec[]> {
  const t = await getTranslations('lots');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  return [
    siteSelect(site, label('fields.siteId')),
    { kind: 'date', name: 'receivedOn', label: label('fields.receivedOn'), quick: days },
    { kind: 'mass', name: 'mass', label: label('fields.mass'), units: massUnits(massUnit) },
    { kind: 'paragraph', name: 'note', label: label('fields.note'), optional: true },
    { kind: 'hidden', name: lotField },
    { kind: 'hidden', name: 'id' },
  ];
}
