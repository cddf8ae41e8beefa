import { getTranslations } from 'next-intl/server';
import type { TemperatureUnit } from '@/lib/database/generated/enums';
import { readingPlaces } from '@/lib/growing/vocabulary';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { temperatureUnits } from '../form/person-units';
import { sentenceCase } from '../format/sentence-case';

type Options = { readonly days: readonly ChoiceOption[]; readonly temperatureUnit: TemperatureUnit };

export async function readingFields({ days, temperatureUnit }: Options): Promise<FieldSpec[]> {
  const t = await getTranslations('treatments');
  const words = await getTranslations('vocabulary.readingPlace');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  return [
    {
      kind: 'radio',
      name: 'place',
      label: label('fields.place'),
      options: readingPlaces.map((value) => ({ value, label: words(value) })),
    },
    {
      kind: 'temperature',
      name: 'celsius',
      label: label('fields.celsius'),
      units: temperatureUnits(temperatureUnit),
      optional: true,
    },
    { kind: 'decimal', name: 'ph', label: label('fields.ph'), optional: true },
    { kind: 'moment', name: 'readAt', label: label('fields.readAt'), quick: days },
    { kind: 'hidden', name: 'treatmentRunId' },
    { kind: 'hidden', name: 'id' },
  ];
}

export async function endFields({ days, temperatureUnit }: Options): Promise<FieldSpec[]> {
  const t = await getTranslations('treatments');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  return [
    { kind: 'moment', name: 'endedAt', label: label('fields.endedAt'), quick: days },
    {
      kind: 'temperature',
      name: 'loadCelsiusAtSpawning',
      label: label('fields.loadCelsiusAtSpawning'),
      hint: t('hints.loadCelsiusAtSpawning'),
      units: temperatureUnits(temperatureUnit),
      optional: true,
    },
    { kind: 'hidden', name: 'id' },
    { kind: 'hidden', name: 'revision' },
  ];
}
