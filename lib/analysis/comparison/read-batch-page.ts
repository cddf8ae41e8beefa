import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { BatchFacts } from './batch-facts';
import { batchRowJson } from './batch-row-json';
import type { ComparisonFilter } from './comparison-filter.input';
import { decodeBatchRow, type EncodedBatch } from './decode-batch-row';
import { boundsOf } from './read-batch-rows';

/** One page of the batches that a filter chooses, its method and site included, latest inoculated first. */
export async function readBatchPage(
  { db, actor }: ReadContext,
  filter: ComparisonFilter,
  { limit, offset }: { readonly limit: number; readonly offset: number },
): Promise<readonly BatchFacts[]> {
  const { from, to, species, container, material } = boundsOf(filter);
  const [method, site] = [filter.method ?? null, filter.site ?? null];
  const [answer] = await db.$queryRaw<{ rows: string | null }[]>`
    select json_agg(${batchRowJson} order by inoculated_on desc, batch_id)::text as rows from (
      select * from batch_outcome
      where network_id = ${actor.networkId}::uuid and container = ${container}
        and inoculated_on between ${from}::date and ${to}::date
        and (${species}::uuid is null or species_id = ${species}::uuid)
        and (${material}::text is null or material_key = ${material}::text)
        and (${method}::text is null or method_key = ${method}::text)
        and (${site}::uuid is null or site_id = ${site}::uuid)
      order by inoculated_on desc, batch_id limit ${limit}::int offset ${offset}::int) shown`;
  // The shape is the statement's own.
  const rows = answer?.rows ? (JSON.parse(answer.rows) as EncodedBatch[]) : [];
  return rows.map(decodeBatchRow);
}
