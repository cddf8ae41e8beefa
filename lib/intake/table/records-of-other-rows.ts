import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { OpenFile } from './rows-to-take';

/** Ids of the records that rows of a table stand for which are not in these states: added ones, and ones found there. */
export async function recordsOfOtherRows(
  { db, actor }: ReadContext,
  file: OpenFile,
  states: readonly string[],
): Promise<ReadonlySet<string>> {
  const rows = await db.$queryRaw<{ id: string }[]>`
    select distinct unnest(record_ids)::text as id from public.intake_row
    where network_id = ${actor.networkId}::uuid and file_id = ${file.id}::uuid
      and state in ('added', 'there') and state::text <> all(${states}::text[])`;
  return new Set(rows.map(({ id }) => id));
}
