import { getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

type Method = { readonly id: string; readonly en: string; readonly es: string; readonly used: boolean };

/** Which methods a site can use, each with whether it has. */
export async function siteMethodFields(methods: readonly Method[], language: Language): Promise<FieldSpec[]> {
  const t = await getTranslations('sites');
  return [
    { kind: 'hidden', name: 'id' },
    { kind: 'hidden', name: 'revision' },
    {
      kind: 'several',
      name: 'methodIds',
      label: sentenceCase(t('fields.methodIds')),
      hint: t('methods.hint'),
      optional: true,
      options: methods.map((method) => ({
        value: method.id,
        label: method[language],
        ...(method.used ? { hint: t('methods.used') } : {}),
      })),
    },
    { kind: 'text', name: 'reason', label: sentenceCase(t('fields.reason')), hint: t('methods.reasonHint') },
  ];
}
