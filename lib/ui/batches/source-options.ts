import { getLocale } from 'next-intl/server';
import type { LinkedBatch } from '@/lib/records/batch/batch-links';
import type { SourceBatch } from '@/lib/records/batch/list-source-batches.query';
import type { ChoiceOption } from '../form/field-spec';
import { formatDate } from '../format/date-text';
import { loadSiteWords } from '../sharing/site-words';

/** Batches to choose as sources, by code and day; those already chosen are always among them. */
export async function sourceOptions(
  batches: readonly SourceBatch[],
  chosen: readonly LinkedBatch[],
): Promise<ChoiceOption[]> {
  const locale = await getLocale();
  const siteWords = await loadSiteWords();
  const known = new Set(batches.map(({ id }) => id));
  return [
    ...batches.map(({ id, code, inoculatedOn }) => ({
      value: id,
      label: `${code} · ${formatDate(inoculatedOn, locale)}`,
    })),
    ...chosen.flatMap(({ id, code, site }) =>
      known.has(id) ? [] : [{ value: id, label: [code ?? [], siteWords(site)].flat().join(' · ') }],
    ),
  ];
}
