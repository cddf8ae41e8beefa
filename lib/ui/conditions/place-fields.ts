import { getTranslations } from 'next-intl/server';
import type { TemperatureUnit } from '@/lib/database/generated/enums';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { temperatureUnits } from '../form/person-units';
import { sentenceCase } from '../format/sentence-case';
import { correctionFields } from '../history/correction-fields';

async function labels() {
  const t = await getTranslations('conditions');
  return (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
}

export async function placeFields(kind: 'add' | 'correct'): Promise<FieldSpec[]> {
  const label = await labels();
  const t = await getTranslations('conditions');
  return [
    { kind: 'text', name: 'name', label: label('fields.name'), hint: t('hints.name') },
    { kind: 'paragraph', name: 'note', label: label('fields.note'), optional: true },
    ...(kind === 'add'
      ? ([
          { kind: 'hidden', name: 'siteId' },
          { kind: 'hidden', name: 'id' },
        ] as const)
      : await correctionFields()),
  ];
}

type When = { readonly days: readonly ChoiceOption[]; readonly temperatureUnit: TemperatureUnit };

export async function conditionsFields({ days, temperatureUnit }: When): Promise<FieldSpec[]> {
  const label = await labels();
  return [
    {
      kind: 'temperature',
      name: 'celsius',
      label: label('fields.celsius'),
      units: temperatureUnits(temperatureUnit),
      optional: true,
    },
    {
      kind: 'decimal',
      name: 'humidityPercent',
      label: label('fields.humidityPercent'),
      suffix: '%',
      optional: true,
    },
    {
      kind: 'whole',
      name: 'carbonDioxidePpm',
      label: label('fields.carbonDioxidePpm'),
      suffix: 'ppm',
      optional: true,
    },
    { kind: 'moment', name: 'readAt', label: label('fields.readAt'), quick: days },
    { kind: 'hidden', name: 'placeId' },
    { kind: 'hidden', name: 'id' },
  ];
}

type Where = { readonly places: readonly ChoiceOption[]; readonly days: readonly ChoiceOption[] };

export async function placeBatchFields({ places, days }: Where): Promise<FieldSpec[]> {
  const label = await labels();
  return [
    { kind: 'radio', name: 'placeId', label: label('fields.placeId'), options: places },
    { kind: 'date', name: 'placedOn', label: label('fields.placedOn'), quick: days },
    { kind: 'hidden', name: 'batchId' },
    { kind: 'hidden', name: 'id' },
  ];
}
