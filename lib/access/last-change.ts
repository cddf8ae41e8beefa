import 'server-only';
import type { LastChange } from '@/lib/base/result';
import type { ReadContext } from './context';

/** Who changed a record last and when; undefined where its history is not the actor's to see. */
export async function lastChange(
  { db, actor }: ReadContext,
  recordId: string,
): Promise<LastChange | undefined> {
  const [row] = await db.$queryRaw<{ at: Date; by: string | null }[]>`
    select at, app.colleague_name(person_id) as by from public.history
    where record_id = ${recordId}::uuid and network_id = ${actor.networkId}::uuid order by at desc, id desc limit 1`;
  return row ? { by: row.by, at: row.at.toISOString(), timeZone: actor.networkTimeZone } : undefined;
}
