import { getTranslations } from 'next-intl/server';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';
import { timeZoneOptions } from '../format/time-zone-options';
import { joinFields } from './join-fields';

export async function setupFields(): Promise<FieldSpec[]> {
  const t = await getTranslations('access');
  return [
    { kind: 'text', name: 'networkName', label: sentenceCase(t('fields.networkName')) },
    {
      kind: 'text',
      name: 'networkCode',
      label: sentenceCase(t('fields.networkCode')),
      hint: t('hints.networkCode'),
      width: 'short',
    },
    {
      kind: 'select',
      name: 'timeZone',
      label: sentenceCase(t('fields.timeZone')),
      options: timeZoneOptions(),
    },
    ...(await joinFields()),
  ];
}
