import type { Actor } from '@/lib/access/actor';
import { readAs, writeAs } from '@/lib/access/scoped-db';
import { recordLook } from '@/lib/records/look/record-look.command';

/**
 * Says of one more open bag, the next each time and each at another site than the last, that somebody looked at it on its
 * last possible day: it counts for contamination from then on, and stays so in the database that is measured.
 */
export async function writeOne(actor: Actor): Promise<void> {
  const [batch] = await readAs(
    actor,
    ({ db }) => db.$queryRaw<{ id: string; day: string }[]>`
      select o.batch_id::text as id, o.contamination_assessed_on::text as day
      from batch_outcome o
      where o.network_id = ${actor.networkId}::uuid and o.container = 'bag' and o.contamination_class = 'not-inspected'
        and o.closed_on is null and o.contamination_assessed_on between current_date - 200 and current_date - 1
      order by (select version from outcome_site_version s where s.network_id = o.network_id and s.site_id = o.site_id), o.batch_id
      limit 1`,
  );
  if (!batch) throw new Error('no open bag is left that nobody looked at');
  const result = await writeAs(actor, {}, (context) =>
    recordLook(context, { id: null, batchId: batch.id, lookedOn: batch.day, note: null }),
  );
  if (result.kind !== 'ok') throw new Error(`a look was not recorded: ${JSON.stringify(result)}`);
}
