import { getTranslations } from 'next-intl/server';
import type { NoticeSites } from '@/lib/records/lot-notice/list-notice-sites.query';
import type { FieldSpec } from '../form/field-spec';
import { sentenceCase } from '../format/sentence-case';

/** The form of a notice; beside each site stands what it has to do with the lot. */
export async function noticeFields({ sites }: NoticeSites): Promise<FieldSpec[]> {
  const t = await getTranslations('notices');
  const own = ({ batches, open, received }: NoticeSites['sites'][number]) => {
    if (batches > 0) return t('siteBatches', { batches, open });
    return received ? t('siteReceived') : t('siteNone');
  };
  const hint = (site: NoticeSites['sites'][number]) =>
    site.made.batches === 0 ? own(site) : `${own(site)}; ${t('siteMade', site.made)}`;
  return [
    { kind: 'hidden', name: 'id' },
    { kind: 'hidden', name: 'lotKind' },
    { kind: 'hidden', name: 'lotId' },
    {
      kind: 'paragraph',
      name: 'whatHappened',
      label: sentenceCase(t('fields.whatHappened')),
      hint: t('hints.whatHappened'),
    },
    {
      kind: 'paragraph',
      name: 'whatToDo',
      label: sentenceCase(t('fields.whatToDo')),
      hint: t('hints.whatToDo'),
    },
    {
      kind: 'several',
      name: 'siteIds',
      label: sentenceCase(t('fields.siteIds')),
      hint: t(sites.some(({ made }) => made.batches > 0) ? 'hints.siteIdsMade' : 'hints.siteIds'),
      options: sites.map((site) => ({ value: site.id, label: site.name, hint: hint(site) })),
    },
  ];
}
