import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { BatchFacts } from './batch-facts';
import type { ComparisonFilter } from './comparison-filter.input';
import { boundsOf, readBatchRows } from './read-batch-rows';

/** One page of the batches that a filter chooses, its method and site included, latest inoculated first. */
export async function readBatchPage(
  context: ReadContext,
  filter: ComparisonFilter,
  { limit, offset }: { readonly limit: number; readonly offset: number },
): Promise<readonly BatchFacts[]> {
  const { from, to, species, container, material } = boundsOf(filter);
  const [method, site] = [filter.method ?? null, filter.site ?? null];
  const shown = await context.db.$queryRaw<{ id: string }[]>`
    select batch_id::text as id from batch_outcome
    where network_id = ${context.actor.networkId}::uuid and container = ${container}
      and inoculated_on between ${from}::date and ${to}::date
      and (${species}::uuid is null or species_id = ${species}::uuid)
      and (${material}::text is null or material_key = ${material}::text)
      and (${method}::text is null or method_key = ${method}::text)
      and (${site}::uuid is null or site_id = ${site}::uuid)
    order by inoculated_on desc, batch_id limit ${limit}::int offset ${offset}::int`;
  const facts = await readBatchRows(context, { ...filter, batches: shown.map(({ id }) => id) });
  const byId = new Map(facts.map((one) => [one.id, one]));
  return shown.flatMap(({ id }) => byId.get(id) ?? []);
}
