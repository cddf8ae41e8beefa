import { getTranslations } from 'next-intl/server';
import type { MethodKind, TemperatureUnit } from '@/lib/database/generated/enums';
import { readingPlaces } from '@/lib/growing/vocabulary';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { temperatureUnits } from '../form/person-units';
import { sentenceCase } from '../format/sentence-case';

type Options = { readonly days: readonly ChoiceOption[]; readonly temperatureUnit: TemperatureUnit };
type ReadingOptions = Options & { readonly method: MethodKind };

export async function readingFields({ days, temperatureUnit, method }: ReadingOptions): Promise<FieldSpec[]> {
  const t = await getTranslations('treatments');
  const words = await getTranslations('vocabulary.readingPlace');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const celsius: FieldSpec = {
    kind: 'temperature',
    name: 'celsius',
    label: label('fields.celsius'),
    units: temperatureUnits(temperatureUnit),
    optional: true,
  };
  const ph: FieldSpec = { kind: 'decimal', name: 'ph', label: label('fields.ph'), optional: true };
  const heated = method === 'hot_water_bath' || method === 'steam';
  return [
    ...(method === 'cold_lime_soak' ? [ph, celsius] : heated ? [celsius] : [celsius, ph]),
    {
      kind: 'radio',
      name: 'place',
      label: label('fields.place'),
      options: readingPlaces.map((value) => ({ value, label: words(value) })),
    },
    { kind: 'moment', name: 'readAt', label: label('fields.readAt'), quick: days },
    { kind: 'hidden', name: 'treatmentRunId' },
    { kind: 'hidden', name: 'id' },
  ];
}

type EndOptions = Options & { readonly loadCelsiusAtSpawning: number | null };

/** What is asked as a run ends; a temperature of the load that was written down before is not asked for again. */
export async function endFields(options: EndOptions): Promise<FieldSpec[]> {
  const { days, temperatureUnit, loadCelsiusAtSpawning } = options;
  const t = await getTranslations('treatments');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  const load: FieldSpec = {
    kind: 'temperature',
    name: 'loadCelsiusAtSpawning',
    label: label('fields.loadCelsiusAtSpawning'),
    hint: t('hints.loadCelsiusAtSpawning'),
    units: temperatureUnits(temperatureUnit),
    optional: true,
  };
  return [
    { kind: 'moment', name: 'endedAt', label: label('fields.endedAt'), quick: days },
    ...(loadCelsiusAtSpawning === null ? [load] : []),
    { kind: 'hidden', name: 'id' },
    { kind: 'hidden', name: 'revision' },
  ];
}
