import { getTranslations } from 'next-intl/server';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

export async function signInFields(): Promise<FieldSpec[]> {
  const t = await getTranslations('access.fields');
  return [
    { kind: 'email', name: 'email', label: sentenceCase(t('email')), autoComplete: 'username' },
    {
      kind: 'password',
      name: 'password',
      label: sentenceCase(t('password')),
      autoComplete: 'current-password',
    },
    // Where the person was going when asked to sign in.
    { kind: 'hidden', name: 'next' },
  ];
}
