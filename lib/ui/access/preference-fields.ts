import { getTranslations } from 'next-intl/server';
import { regions } from '@/lib/access/preferences.input';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

export async function preferenceFields(): Promise<FieldSpec[]> {
  const t = await getTranslations('access');
  const label = (name: 'language' | 'region' | 'massUnit' | 'temperatureUnit' | 'volumeUnit' | 'name') =>
    sentenceCase(t(`fields.${name}`));
  return [
    { kind: 'text', name: 'name', label: label('name'), autoComplete: 'name' },
    {
      kind: 'radio',
      name: 'language',
      label: label('language'),
      options: [
        { value: 'en', label: t('languages.en') },
        { value: 'es', label: t('languages.es') },
      ],
    },
    {
      kind: 'select',
      name: 'region',
      label: label('region'),
      options: regions.map((region) => ({ value: region, label: t(`regions.${region}`) })),
    },
    {
      kind: 'radio',
      name: 'massUnit',
      label: label('massUnit'),
      options: [
        { value: 'kg', label: t('units.kg') },
        { value: 'lb', label: t('units.lb') },
      ],
    },
    {
      kind: 'radio',
      name: 'temperatureUnit',
      label: label('temperatureUnit'),
      options: [
        { value: 'celsius', label: t('units.celsius') },
        { value: 'fahrenheit', label: t('units.fahrenheit') },
      ],
    },
    {
      kind: 'radio',
      name: 'volumeUnit',
      label: label('volumeUnit'),
      options: [
        { value: 'litre', label: t('units.litre') },
        { value: 'gallon', label: t('units.gallon') },
      ],
    },
  ];
}
