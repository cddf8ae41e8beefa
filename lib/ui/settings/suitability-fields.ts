import { getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import { materialKinds, methodKinds } from '@/lib/growing/vocabulary';
import type { SuitabilityList } from '@/lib/records/settings/list-suitability.query';
import { suitabilityVerdicts } from '@/lib/records/settings/settings.input';
import type { FieldSpec } from '../form/field-spec';
import { namedOptions } from '../form/named-options';
import { sentenceCase } from '../format/sentence-case';
import { correctionFields } from '../history/correction-fields';

async function verdictFields(): Promise<FieldSpec[]> {
  const t = await getTranslations('settings');
  const words = await getTranslations('vocabulary.suitabilityVerdict');
  return [
    {
      kind: 'radio',
      name: 'verdict',
      label: sentenceCase(t('fields.verdict')),
      options: suitabilityVerdicts.map((value) => ({
        value,
        label: words(value),
        hint: t(`suitability.verdictHint.${value}`),
      })),
    },
    { kind: 'text', name: 'reasonEn', label: sentenceCase(t('fields.reasonEn')), width: 'long' },
    { kind: 'text', name: 'reasonEs', label: sentenceCase(t('fields.reasonEs')), width: 'long' },
  ];
}

export async function changeSuitabilityFields(): Promise<FieldSpec[]> {
  return [...(await verdictFields()), ...(await correctionFields())];
}

/** A pair that has no row yet: two of species, material and method. */
export async function addSuitabilityFields(list: SuitabilityList, language: Language): Promise<FieldSpec[]> {
  const t = await getTranslations('settings');
  const words = await getTranslations('vocabulary');
  const none = { optional: true, emptyLabel: t('suitability.any') } as const;
  return [
    {
      kind: 'select',
      name: 'speciesId',
      label: sentenceCase(t('fields.speciesId')),
      options: namedOptions(list.species, language),
      ...none,
    },
    {
      kind: 'select',
      name: 'materialKind',
      label: sentenceCase(t('fields.materialKind')),
      options: materialKinds.map((value) => ({ value, label: words(`materialKind.${value}`) })),
      ...none,
    },
    {
      kind: 'select',
      name: 'methodKind',
      label: sentenceCase(t('fields.methodKind')),
      options: methodKinds.map((value) => ({ value, label: words(`methodKind.${value}`) })),
      ...none,
    },
    ...(await verdictFields()),
    { kind: 'hidden', name: 'id' },
  ];
}
