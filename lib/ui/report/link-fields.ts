import { getTranslations } from 'next-intl/server';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

/** For whom a link is, in which language it tells the report, and until when. */
export async function linkFields(): Promise<FieldSpec[]> {
  const t = await getTranslations('links');
  return [
    { kind: 'hidden', name: 'reportId' },
    { kind: 'text', name: 'forWhom', label: sentenceCase(t('fields.forWhom')), hint: t('forHint') },
    {
      kind: 'radio',
      name: 'language',
      label: sentenceCase(t('fields.language')),
      options: [
        { value: 'en', label: t('languageEn') },
        { value: 'es', label: t('languageEs') },
      ],
    },
    { kind: 'date', name: 'lastDay', label: sentenceCase(t('fields.lastDay')), quick: [] },
  ];
}
