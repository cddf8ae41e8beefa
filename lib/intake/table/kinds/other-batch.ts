import type { FieldError } from '@/lib/base/result';
import type { RowValues } from '../read-row';

/** What a row can contradict of the batch that its code names. */
export type NamedBatch = {
  readonly code: string;
  readonly siteId: string;
  readonly speciesId: string;
  /** YYYY-MM-DD. */
  readonly inoculatedOn: string;
};

/** The site that a row names, or that was chosen for rows which name none, where it is not the site of its batch. */
export function otherSite(
  values: RowValues,
  chosen: string | null,
  { code, siteId }: Pick<NamedBatch, 'code' | 'siteId'>,
  field = 'site',
): readonly FieldError[] {
  const said = values.get('site') ?? chosen;
  return said === null || said === siteId ? [] : [{ field, code: 'intake-other-site', values: { code } }];
}

/** Everything by which a line of a notebook means another batch than the one its code names. */
export function otherBatch(
  values: RowValues,
  chosen: string | null,
  batch: NamedBatch,
): readonly FieldError[] {
  const { code, speciesId, inoculatedOn } = batch;
  const species = values.get('species') ?? speciesId;
  const day = values.get('inoculatedOn') ?? inoculatedOn;
  const differing: FieldError[] = [];
  if (species !== speciesId)
    differing.push({ field: 'speciesId', code: 'intake-other-species', values: { code } });
  if (day !== inoculatedOn)
    differing.push({ field: 'inoculatedOn', code: 'intake-other-day', values: { code, date: inoculatedOn } });
  return [...otherSite(values, chosen, batch, 'siteId'), ...differing];
}
