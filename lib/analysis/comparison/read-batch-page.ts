import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { BatchFacts } from './batch-facts';
import type { ComparisonFilter } from './comparison-filter.input';
import { boundsOf, readBatchRows } from './read-batch-rows';
import type { RowPlace } from './row-place';

/** Where a page begins: just after a place, or ends: just before one; neither of the first. */
export type PageFrom = { readonly after?: RowPlace | undefined; readonly before?: RowPlace | undefined };

export type BatchPage = {
  readonly batches: readonly BatchFacts[];
  /** Whether there is more beyond, in the direction in which it was read. */
  readonly more: boolean;
};

/**
 * One page of the batches that a filter chooses, its method and site included, latest inoculated first. It begins at a
 * place and not at a number, so that the last page is found as fast as the first.
 */
export async function readBatchPage(
  context: ReadContext,
  filter: ComparisonFilter,
  limit: number,
  { after, before }: PageFrom,
): Promise<BatchPage> {
  const { species, container, material } = boundsOf(filter);
  const { db, actor } = context;
  const [method, site] = [filter.method ?? null, filter.site ?? null];
  type Shown = { id: string };
  // The narrowed period follows from the place, and lets the database begin there.
  const to = after && after.inoculatedOn < filter.to ? after.inoculatedOn : filter.to;
  const from = before && before.inoculatedOn > filter.from ? before.inoculatedOn : filter.from;
  const shown = before
    ? await db.$queryRaw<Shown[]>`
    select batch_id::text as id from batch_outcome
    where network_id = ${actor.networkId}::uuid and container = ${container}
      and inoculated_on between ${from}::date and ${to}::date
      and (inoculated_on, batch_id) > (${before.inoculatedOn}::date, ${before.id}::uuid)
      and (${species}::uuid is null or species_id = ${species}::uuid)
      and (${material}::text is null or material_key = ${material}::text)
      and (${method}::text is null or method_key = ${method}::text)
      and (${site}::uuid is null or site_id = ${site}::uuid)
    order by inoculated_on, batch_id limit ${limit + 1}::int`
    : await db.$queryRaw<Shown[]>`
    select batch_id::text as id from batch_outcome
    where network_id = ${actor.networkId}::uuid and container = ${container}
      and inoculated_on between ${from}::date and ${to}::date
      and (${after?.id ?? null}::uuid is null
        or (inoculated_on, batch_id) < (${after?.inoculatedOn ?? null}::date, ${after?.id ?? null}::uuid))
      and (${species}::uuid is null or species_id = ${species}::uuid)
      and (${material}::text is null or material_key = ${material}::text)
      and (${method}::text is null or method_key = ${method}::text)
      and (${site}::uuid is null or site_id = ${site}::uuid)
    order by inoculated_on desc, batch_id desc limit ${limit + 1}::int`;
  const ids = shown.slice(0, limit).map(({ id }) => id);
  if (before) ids.reverse();
  const facts = await readBatchRows(context, { ...filter, batches: ids });
  const byId = new Map(facts.map((one) => [one.id, one]));
  return { batches: ids.flatMap((id) => byId.get(id) ?? []), more: shown.length > limit };
}
