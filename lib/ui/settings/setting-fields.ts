import { getTranslations } from 'next-intl/server';
import type { TemperatureUnit } from '@/lib/database/generated/enums';
import type { FieldSpec } from '../form/field-spec';
import { temperatureUnits } from '../form/person-units';
import { sentenceCase } from '../format/sentence-case';
import { correctionFields } from '../history/correction-fields';

async function labels() {
  const t = await getTranslations('settings');
  return (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
}

async function nameFields(): Promise<FieldSpec[]> {
  const label = await labels();
  return [
    { kind: 'text', name: 'nameEn', label: label('fields.nameEn') },
    { kind: 'text', name: 'nameEs', label: label('fields.nameEs') },
  ];
}

export async function methodFields(unit: TemperatureUnit): Promise<FieldSpec[]> {
  const label = await labels();
  const units = temperatureUnits(unit);
  return [
    ...(await nameFields()),
    { kind: 'temperature', name: 'minCelsius', label: label('fields.minCelsius'), units, optional: true },
    { kind: 'temperature', name: 'maxCelsius', label: label('fields.maxCelsius'), units, optional: true },
    { kind: 'decimal', name: 'minPh', label: label('fields.minPh'), optional: true },
    { kind: 'whole', name: 'minMinutes', label: label('fields.minMinutes'), optional: true },
    { kind: 'whole', name: 'maxMinutes', label: label('fields.maxMinutes'), optional: true },
    ...(await correctionFields()),
  ];
}

export async function materialFields(): Promise<FieldSpec[]> {
  const label = await labels();
  return [
    ...(await nameFields()),
    {
      kind: 'decimal',
      name: 'receivedMoisturePercent',
      label: label('fields.receivedMoisturePercent'),
      suffix: '%',
      optional: true,
    },
    ...(await correctionFields()),
  ];
}

export async function speciesFields(): Promise<FieldSpec[]> {
  return [...(await nameFields()), ...(await correctionFields())];
}

const expectedDays = [
  'firstLookDays',
  'colonisedFromDays',
  'colonisedToDays',
  'pinsFromDays',
  'pinsToDays',
  'firstHarvestFromDays',
  'firstHarvestToDays',
  'betweenFlushesFromDays',
  'betweenFlushesToDays',
] as const;

export async function windowFields(): Promise<FieldSpec[]> {
  const label = await labels();
  const t = await getTranslations('settings');
  return [
    { kind: 'whole', name: 'contaminationDays', label: label('fields.contaminationDays') },
    { kind: 'whole', name: 'yieldDays', label: label('fields.yieldDays') },
    {
      kind: 'group',
      name: 'expected',
      legend: t('expectedLegend'),
      hint: t('expectedHint'),
      fields: expectedDays.map(
        (name) =>
          ({ kind: 'whole', name, label: label(`fields.${name}`), optional: true }) satisfies FieldSpec,
      ),
    },
    ...(await correctionFields()),
  ];
}
