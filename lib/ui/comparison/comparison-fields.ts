import { getTranslations } from 'next-intl/server';
import type { ComparisonChoices, Named } from '@/lib/analysis/comparison/comparison-choices';
import {
  type ComparisonFilter,
  mixed,
  notRecorded,
  secondLife,
  together,
} from '@/lib/analysis/comparison/comparison-filter.input';
import type { Language } from '@/lib/database/generated/enums';
import { containerKinds } from '@/lib/growing/vocabulary';
import { dateValues } from '../form/date-values';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';

function options(rows: readonly Named[], language: Language): ChoiceOption[] {
  return rows
    .map((row) => ({ value: row.id, label: row[language] }))
    .sort((a, b) => a.label.localeCompare(b.label, language));
}

/**
 * The filters of the comparison; species, container and material are one each unless the reader asks for all. Of the sites
 * that have left only the one that is chosen is offered.
 */
export async function comparisonFields(
  choices: ComparisonChoices,
  language: Language,
  chosenSite: string | undefined,
): Promise<FieldSpec[]> {
  const t = await getTranslations('comparison');
  const words = await getTranslations('vocabulary.containerKind');
  return [
    {
      kind: 'select',
      name: 'species',
      label: t('filter.species'),
      options: [...options(choices.species, language), { value: together, label: t('filter.allSpecies') }],
    },
    {
      kind: 'select',
      name: 'container',
      label: t('filter.container'),
      options: containerKinds.map((kind) => ({ value: kind, label: words(kind) })),
    },
    {
      kind: 'select',
      name: 'material',
      label: t('filter.material'),
      options: [
        { value: together, label: t('filter.allMaterials') },
        ...options(choices.materials, language),
        { value: mixed, label: t('filter.mixedMaterial') },
      ],
    },
    {
      kind: 'select',
      name: 'method',
      label: t('columns.method'),
      emptyLabel: t('allMethods'),
      options: [
        ...options(choices.methods, language),
        { value: mixed, label: t('mixedMethod') },
        { value: secondLife, label: t('secondLife') },
        { value: notRecorded, label: t('methodNotRecorded') },
      ],
    },
    {
      kind: 'select',
      name: 'site',
      label: t('columns.site'),
      emptyLabel: t('filter.allSites'),
      options: choices.sites
        .filter(({ id, left }) => !left || id === chosenSite)
        .map(({ id, name }) => ({ value: id, label: name }))
        .sort((a, b) => a.label.localeCompare(b.label, language)),
    },
    { kind: 'date', name: 'from', label: t('filter.from'), quick: [] },
    { kind: 'date', name: 'to', label: t('filter.to'), quick: [] },
  ];
}

export function comparisonValues(filter: ComparisonFilter): Record<string, string> {
  const { species, container, material, method = '', site = '', from, to } = filter;
  return {
    ...{ species, container, material, method, site },
    ...dateValues('from', from),
    ...dateValues('to', to),
  };
}
