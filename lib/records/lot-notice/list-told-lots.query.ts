import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** The latest notice that stands about a lot of spawn, and at how many of its sites a member has read it. */
export type ToldLot = {
  readonly lotId: string;
  readonly noticeId: string;
  readonly sites: number;
  readonly readSites: number;
};

/** Lots of spawn that sites were told about, each once, for the coordinator who tells them. */
export async function listToldLots({ db, actor }: ReadContext): Promise<readonly ToldLot[]> {
  if (actor.role !== 'coordinator') return [];
  return db.$queryRaw<ToldLot[]>`
    select distinct on (n.spawn_lot_id) n.spawn_lot_id::text as "lotId", n.id::text as "noticeId",
      (select count(*)::int from lot_notice_site t
        where t.network_id = n.network_id and t.notice_id = n.id and t.voided_at is null) as sites,
      (select count(distinct t.site_id)::int from lot_notice_site t
        join membership_site b on b.network_id = t.network_id and b.site_id = t.site_id and b.ended_at is null
          and b.voided_at is null
        join membership m on m.network_id = b.network_id and m.id = b.membership_id and m.role = 'member'
          and m.ended_at is null and m.voided_at is null
        join lot_notice_read r on r.network_id = t.network_id and r.notice_id = t.notice_id
          and r.person_id = m.person_id and r.voided_at is null
        where t.network_id = n.network_id and t.notice_id = n.id and t.voided_at is null) as "readSites"
    from lot_notice n
    where n.network_id = ${actor.networkId}::uuid and n.voided_at is null and n.spawn_lot_id is not null
    order by n.spawn_lot_id, n.id desc`;
}
