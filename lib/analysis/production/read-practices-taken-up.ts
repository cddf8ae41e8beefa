import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { Period } from './read-production';

/** A site that used a treatment for the first time in the period. */
export type PracticeTakenUp = {
  readonly siteId: string;
  readonly methodId: string;
  readonly methodEn: string;
  readonly methodEs: string;
};

/**
 * A site takes up a practice with its first batch treated so, of all its records; a site whose records begin in the
 * period takes up whatever it does. Second lives are left out: nothing was treated anew.
 */
export async function readPracticesTakenUp(
  { db, actor }: ReadContext,
  { from, to }: Period,
): Promise<PracticeTakenUp[]> {
  return db.$queryRaw<PracticeTakenUp[]>`
    select f.site_id::text as "siteId", m.id::text as "methodId", m.name_en as "methodEn", m.name_es as "methodEs"
    from (select site_id, method_id, min(inoculated_on) as first_on from batch
      where network_id = ${actor.networkId}::uuid and voided_at is null and not second_life and method_id is not null
      group by site_id, method_id) f
    join method m on m.network_id = ${actor.networkId}::uuid and m.id = f.method_id
    where f.first_on between ${from}::date and ${to}::date
    order by m.name_en, f.site_id`;
}
