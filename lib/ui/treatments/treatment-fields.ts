import { getTranslations } from 'next-intl/server';
import type { MassUnit, TemperatureUnit, VolumeUnit } from '@/lib/database/generated/enums';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { massUnits } from '../form/mass-units';
import { temperatureUnits, volumeUnits } from '../form/person-units';
import { sentenceCase } from '../format/sentence-case';
import { correctionFields } from '../history/correction-fields';

type Options = {
  readonly kind: 'start' | 'correct';
  readonly sites: readonly ChoiceOption[];
  readonly methods: readonly ChoiceOption[];
  readonly days: readonly ChoiceOption[];
  readonly person: { massUnit: MassUnit; temperatureUnit: TemperatureUnit; volumeUnit: VolumeUnit };
};

export async function treatmentFields({ kind, sites, methods, days, person }: Options): Promise<FieldSpec[]> {
  const t = await getTranslations('treatments');
  const common = await getTranslations('common');
  const label = (name: Parameters<typeof t>[0]) => sentenceCase(t(name));
  return [
    { kind: 'select', name: 'siteId', label: label('fields.siteId'), options: sites },
    { kind: 'select', name: 'methodId', label: label('fields.methodId'), options: methods },
    {
      kind: 'caution',
      name: 'care',
      title: common('caution.title'),
      lines: [t('care.lime'), t('care.heat'), t('care.burner'), t('care.lifting'), common('caution.rule')],
    },
    {
      kind: 'moment',
      name: 'startedAt',
      label: label('fields.startedAt'),
      hint: t('hints.startedAt'),
      quick: days,
    },
    {
      kind: 'moment',
      name: 'endedAt',
      label: label('fields.endedAt'),
      hint: t('hints.endedAt'),
      quick: days,
      optional: true,
    },
    {
      kind: 'volume',
      name: 'water',
      label: label('fields.water'),
      units: volumeUnits(person.volumeUnit),
      optional: true,
    },
    {
      kind: 'mass',
      name: 'lime',
      label: label('fields.lime'),
      hint: t('hints.lime'),
      units: massUnits(person.massUnit),
      optional: true,
    },
    {
      kind: 'temperature',
      name: 'loadCelsiusAtSpawning',
      label: label('fields.loadCelsiusAtSpawning'),
      hint: t('hints.loadCelsiusAtSpawning'),
      units: temperatureUnits(person.temperatureUnit),
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
