import { getTranslations } from 'next-intl/server';
import { sharingLevels } from '@/lib/records/sharing/agree-sharing.input';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

/** What a site shares with each of the two who are outside it, each choice with what a reader then sees. */
export async function sharingFields(site: string): Promise<FieldSpec[]> {
  const t = await getTranslations('sharing');
  return [
    { kind: 'hidden', name: 'id' },
    { kind: 'hidden', name: 'revision' },
    {
      kind: 'radio',
      name: 'withMembers',
      label: sentenceCase(t('fields.withMembers')),
      hint: t('hints.members'),
      options: sharingLevels.map((level) => ({
        value: level,
        label: t(`members.${level}`),
        hint: t(`members.${level}Hint`, { site }),
      })),
    },
    {
      kind: 'radio',
      name: 'withFunder',
      label: sentenceCase(t('fields.withFunder')),
      hint: t('hints.funder'),
      options: sharingLevels.map((level) => ({
        value: level,
        label: t(`funder.${level}`),
        hint: t(`funder.${level}Hint`),
      })),
    },
    {
      kind: 'text',
      name: 'reason',
      label: sentenceCase(t('fields.reason')),
      hint: t('hints.reason'),
      optional: true,
    },
  ];
}
