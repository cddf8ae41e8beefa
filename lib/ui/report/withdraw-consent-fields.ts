import { getTranslations } from 'next-intl/server';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

/** What those in a story no longer agree to, and since when. */
export async function withdrawConsentFields(
  hasPicture: boolean,
  days: readonly ChoiceOption[],
): Promise<FieldSpec[]> {
  const t = await getTranslations('stories');
  const parts = hasPicture ? (['picture', 'story'] as const) : (['story'] as const);
  return [
    { kind: 'hidden', name: 'id' },
    {
      kind: 'radio',
      name: 'part',
      label: sentenceCase(t('fields.part')),
      options: parts.map((value) => ({ value, label: t(`part.${value}`) })),
    },
    { kind: 'date', name: 'withdrawnOn', label: sentenceCase(t('fields.withdrawnOn')), quick: days },
  ];
}
