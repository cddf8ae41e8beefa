import { getTranslations } from 'next-intl/server';
import { type LevelChoice, levelChoices } from '@/lib/analysis/adjusted/question-scope.input';
import type { ComparisonChoices } from '@/lib/analysis/comparison/comparison-choices';
import type { ComparisonFilter } from '@/lib/analysis/comparison/comparison-filter.input';
import type { Language } from '@/lib/database/generated/enums';
import { comparisonFields, comparisonValues } from '../comparison/comparison-fields';
import type { FieldSpec } from '../form/field-spec';

/** What a question is asked of: the filters of the comparison, all methods and sites, and what is levelled out. */
export async function questionFields(choices: ComparisonChoices, language: Language): Promise<FieldSpec[]> {
  const t = await getTranslations('insight.filter');
  const fields = await comparisonFields(choices, language, undefined);
  return [
    ...fields.filter(({ name }) => name !== 'method' && name !== 'site'),
    {
      kind: 'select',
      name: 'level',
      label: t('level'),
      options: levelChoices.map((value) => ({ value, label: t(value) })),
    },
  ];
}

export function questionValues(filter: ComparisonFilter, level: LevelChoice): Record<string, string> {
  return { ...comparisonValues(filter), level };
}
