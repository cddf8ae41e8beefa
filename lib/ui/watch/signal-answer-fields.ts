import { getTranslations } from 'next-intl/server';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

/** The form that answers a signal; an answer that was given can be taken back. */
export async function signalAnswerFields(sentence: string, answered: boolean): Promise<FieldSpec[]> {
  const t = await getTranslations('watch');
  const choices = answered ? (['explained', 'seen', 'open'] as const) : (['explained', 'seen'] as const);
  return [
    { kind: 'prose', name: 'what', text: sentence },
    { kind: 'hidden', name: 'signalKey' },
    {
      kind: 'radio',
      name: 'answer',
      label: sentenceCase(t('fields.answer')),
      options: choices.map((value) => ({
        value,
        label: t(`watch.choice.${value}`),
        hint: t(`watch.choice.${value}Hint`),
      })),
    },
    {
      kind: 'paragraph',
      name: 'words',
      label: sentenceCase(t('fields.words')),
      hint: t('watch.wordsHint'),
    },
  ];
}
