import { getTranslations } from 'next-intl/server';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';
import { roleFields } from './invite-fields';

export async function membershipFields(sites: readonly { id: string; name: string }[]): Promise<FieldSpec[]> {
  const t = await getTranslations('people');
  return [
    { kind: 'hidden', name: 'id' },
    { kind: 'hidden', name: 'revision' },
    ...(await roleFields(sites)),
    {
      kind: 'radio',
      name: 'state',
      label: sentenceCase(t('fields.state')),
      options: [
        { value: 'active', label: t('state.active') },
        { value: 'ended', label: t('state.ended'), hint: t('endedHint') },
      ],
    },
    { kind: 'text', name: 'reason', label: sentenceCase(t('fields.reason')) },
  ];
}
