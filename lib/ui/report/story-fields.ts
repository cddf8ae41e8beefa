import { getLocale, getTranslations } from 'next-intl/server';
import type { PhotoToChoose } from '@/lib/report/story/list-photos-to-choose.query';
import type { ChoiceOption, FieldSpec } from '../form/field-spec';
import { formatInstant } from '../format/instant-text';
import { sentenceCase } from '../format/sentence-case';

type Asked = {
  readonly photos: readonly PhotoToChoose[];
  readonly days: readonly ChoiceOption[];
  readonly timeZone: string;
};

/** A story of a report: its words, a picture with its description, and the consent of those in it. */
export async function storyFields({ photos, days, timeZone }: Asked): Promise<FieldSpec[]> {
  const t = await getTranslations('stories');
  const locale = await getLocale();
  const pictures = photos.map(({ id, batchCode, caption, takenAt }) => {
    const named = { code: batchCode, date: formatInstant(new Date(takenAt), timeZone, locale) };
    return {
      value: id,
      picture: `/photos/${id}?size=small`,
      label: caption ? t('photoChoiceCaption', { ...named, caption }) : t('photoChoice', named),
    };
  });
  return [
    { kind: 'hidden', name: 'id' },
    { kind: 'hidden', name: 'reportId' },
    { kind: 'text', name: 'title', label: sentenceCase(t('fields.title')) },
    { kind: 'paragraph', name: 'words', label: sentenceCase(t('fields.words')) },
    {
      kind: 'radio',
      name: 'photoId',
      label: sentenceCase(t('fields.photoId')),
      hint: t('photoHint'),
      optional: true,
      options: [{ value: '', label: t('noPhoto') }, ...pictures],
    },
    {
      kind: 'text',
      name: 'pictureAlt',
      label: sentenceCase(t('fields.pictureAlt')),
      hint: t('altHint'),
      optional: true,
      width: 'long',
    },
    {
      kind: 'several',
      name: 'consent',
      label: sentenceCase(t('fields.consent')),
      options: [{ value: 'yes', label: t('consentYes') }],
    },
    { kind: 'date', name: 'consentOn', label: sentenceCase(t('fields.consentOn')), quick: days },
  ];
}
