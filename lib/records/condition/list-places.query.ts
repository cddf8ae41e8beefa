import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** A place of a site with when it was read last. */
export type PlaceLine = {
  readonly id: string;
  readonly name: string;
  readonly lastReadAt: Date | null;
};

/** The places of a site by name. */
export async function listPlaces({ db, actor }: ReadContext, siteId: string): Promise<PlaceLine[]> {
  return db.$queryRaw<PlaceLine[]>`
    select p.id, p.name, (select max(r.read_at) from condition_reading r
      where r.network_id = p.network_id and r.place_id = p.id and r.voided_at is null) as "lastReadAt"
    from condition_place p
    where p.network_id = ${actor.networkId}::uuid and p.site_id = ${siteId}::uuid and p.voided_at is null
    order by lower(p.name), p.id`;
}
