import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { OpenFile } from './rows-to-take';

const mostNamed = 12;

/** The first batches that added rows of a table are or tell of; none where its rows are no batches. */
export async function addedBatches(
  { db, actor }: ReadContext,
  file: OpenFile,
): Promise<readonly { id: string; code: string }[]> {
  if (file.kind !== 'batches' && file.kind !== 'notebook') return [];
  return await db.$queryRaw<{ id: string; code: string }[]>`
    select b.id::text, b.code from public.intake_row r
    join public.batch b on b.network_id = r.network_id and b.id = r.record_ids[1] and b.voided_at is null
    where r.network_id = ${actor.networkId}::uuid and r.file_id = ${file.id}::uuid and r.state = 'added'
    group by b.id, b.code order by min(r.line) limit ${mostNamed}`;
}
