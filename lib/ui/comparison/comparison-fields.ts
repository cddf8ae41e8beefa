import { getTranslations } from 'next-intl/server';
import type { ComparisonChoices, Named } from '@/lib/analysis/comparison/comparison-choices';
import { type ComparisonFilter, mixed, together } from '@/lib/analysis/comparison/comparison-filter.input';
import type { Language } from '@/lib/database/generated/enums';
import { containerKinds } from '@/lib/growing/vocabulary';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';

function options(rows: readonly Named[], language: Language): ChoiceOption[] {
  return rows
    .map((row) => ({ value: row.id, label: row[language] }))
    .sort((a, b) => a.label.localeCompare(b.label, language));
}

/** The filters of the comparison; species, container and material are one each unless the reader asks for all. */
export async function comparisonFields(choices: ComparisonChoices, language: Language): Promise<FieldSpec[]> {
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
    { kind: 'text', name: 'from', label: t('filter.from'), hint: t('filter.dateHint'), width: 'short' },
    { kind: 'text', name: 'to', label: t('filter.to'), width: 'short' },
  ];
}

export function comparisonValues(filter: ComparisonFilter): Record<string, string> {
  const { species, container, material, from, to } = filter;
  return { species, container, material, from, to };
}
