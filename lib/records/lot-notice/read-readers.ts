import 'server-only';
import type { ReadContext } from '@/lib/access/context';

export type SiteReaders = {
  readonly siteId: string;
  readonly siteName: string;
  /** Members there who marked the notice read, and when. */
  readonly read: readonly { readonly name: string; readonly at: string }[];
  /** Names of the members who have not yet. */
  readonly notYet: readonly string[];
};

type Row = { site_id: string; site_name: string; name: string | null; read_at: Date | null; member: boolean };

/** Of each site that a notice is told to: its present members who have read it, and those who have not. */
export async function readReaders({ db, actor }: ReadContext, noticeId: string): Promise<SiteReaders[]> {
  const rows = await db.$queryRaw<Row[]>`
    select t.site_id, s.name as site_name, c.name, r.read_at, m.id is not null as member
    from lot_notice_site t
    join site s on s.network_id = t.network_id and s.id = t.site_id
    left join membership_site b on b.network_id = t.network_id and b.site_id = t.site_id and b.ended_at is null
      and b.voided_at is null
    left join membership m on m.network_id = b.network_id and m.id = b.membership_id and m.role = 'member'
      and m.ended_at is null and m.voided_at is null
    left join person_contact c on c.person_id = m.person_id
    left join lot_notice_read r on r.network_id = t.network_id and r.notice_id = t.notice_id
      and r.person_id = m.person_id and r.voided_at is null
    where t.network_id = ${actor.networkId}::uuid and t.notice_id = ${noticeId}::uuid and t.voided_at is null
    order by s.name, s.id, c.name`;
  const sites = new Map<string, SiteReaders>();
  for (const { site_id: siteId, site_name: siteName, name, read_at, member } of rows) {
    const site = sites.get(siteId) ?? { siteId, siteName, read: [], notYet: [] };
    const known = name ?? '–';
    const next =
      read_at === null
        ? { ...site, notYet: [...site.notYet, known] }
        : { ...site, read: [...site.read, { name: known, at: read_at.toISOString() }] };
    sites.set(siteId, member ? next : site);
  }
  return [...sites.values()];
}
