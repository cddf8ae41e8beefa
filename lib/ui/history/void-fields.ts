import { getTranslations } from 'next-intl/server';
import type { FieldSpec } from '../form/field-spec';

/** Which record, and the reason for taking it or its note out. */
export async function voidFields(reasonHint?: string): Promise<FieldSpec[]> {
  const t = await getTranslations('common.voiding');
  return [
    { kind: 'hidden', name: 'kind' },
    { kind: 'hidden', name: 'id' },
    { kind: 'hidden', name: 'revision' },
    { kind: 'hidden', name: 'back' },
    { kind: 'text', name: 'reason', label: t('reason'), hint: reasonHint ?? t('reasonHint') },
  ];
}
