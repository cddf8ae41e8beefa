import type { LinkedBatch } from '@/lib/records/batch/batch-links';
import type { SourceBatch } from '@/lib/records/batch/list-source-batches.query';
import type { ChoiceOption } from '../form/field-spec';
import { formatDate } from '../format/date-text';

/** Batches to choose as sources, by code and day; those already chosen are always among them. */
export function sourceOptions(
  batches: readonly SourceBatch[],
  chosen: readonly LinkedBatch[],
  locale: string,
): ChoiceOption[] {
  const known = new Set(batches.map(({ id }) => id));
  return [
    ...batches.map(({ id, code, inoculatedOn }) => ({
      value: id,
      label: `${code} · ${formatDate(inoculatedOn, locale)}`,
    })),
    ...chosen.flatMap(({ id, code, siteName }) =>
      known.has(id) ? [] : [{ value: id, label: `${code} · ${siteName}` }],
    ),
  ];
}
