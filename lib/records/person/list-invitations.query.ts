import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { MembershipRole } from '@/lib/database/generated/enums';
import { linkNeverMade } from './link-never-made';

export type InvitationView = {
  readonly id: string;
  readonly name: string | null;
  readonly email: string | null;
  readonly role: MembershipRole;
  readonly siteNames: readonly string[];
  readonly expiresAt: Date;
  readonly expired: boolean;
  /** Whether nobody has seen a link of it yet. */
  readonly linkless: boolean;
};

/** Invitations that nobody has accepted yet, also those that ran out, newest first; for the coordinator. */
export async function listInvitations({ db, actor }: ReadContext, now: Date): Promise<InvitationView[]> {
  if (actor.role !== 'coordinator') return [];
  const rows = await db.invitation.findMany({
    where: { networkId: actor.networkId, acceptedAt: null, voidedAt: null },
    orderBy: { id: 'desc' },
  });
  const sites = await db.site.findMany({
    where: { id: { in: rows.flatMap(({ siteIds }) => siteIds) } },
    select: { id: true, name: true },
  });
  return rows.map(({ id, forName, forEmail, role, siteIds, expiresAt, origin, revision }) => ({
    ...{ id, role, expiresAt, name: forName, email: forEmail, expired: expiresAt <= now },
    linkless: origin === linkNeverMade.origin && revision === linkNeverMade.revision,
    siteNames: sites.filter((site) => siteIds.includes(site.id)).map(({ name }) => name),
  }));
}
