import { getTranslations } from 'next-intl/server';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

/** Where the word is typed that says that leaving is meant. */
export async function wordField(): Promise<FieldSpec> {
  const t = await getTranslations('leaving');
  return {
    kind: 'text',
    name: 'word',
    label: sentenceCase(t('fields.word')),
    hint: t('hints.word', { word: t('word') }),
    width: 'short',
    autoComplete: 'off',
  };
}
