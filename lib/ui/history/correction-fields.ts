import { getTranslations } from 'next-intl/server';
import type { FieldSpec } from '../form/field-spec';

/** What every correction carries: which record, the revision it was read at, and why it changes. */
export async function correctionFields(): Promise<FieldSpec[]> {
  const t = await getTranslations('common');
  return [
    { kind: 'hidden', name: 'id' },
    { kind: 'hidden', name: 'revision' },
    { kind: 'text', name: 'reason', label: t('correctionReason') },
  ];
}
