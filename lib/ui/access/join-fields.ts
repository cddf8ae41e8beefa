import { getTranslations } from 'next-intl/server';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

export async function joinFields(): Promise<FieldSpec[]> {
  const t = await getTranslations('access');
  return [
    { kind: 'text', name: 'name', label: sentenceCase(t('fields.name')), autoComplete: 'name' },
    { kind: 'email', name: 'email', label: sentenceCase(t('fields.email')), autoComplete: 'email' },
    {
      kind: 'password',
      name: 'password',
      label: sentenceCase(t('fields.password')),
      hint: t('hints.password'),
      autoComplete: 'new-password',
    },
  ];
}
