import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { Invitation } from '@/lib/database/generated/client';
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

/** Which invitations wait: those that nobody accepted or took back. */
export const waiting = { acceptedAt: null, voidedAt: null } as const;

/** Invitations as a coordinator sees them, with the names of their sites. */
export async function invitationViews(
  { db }: ReadContext,
  rows: readonly Invitation[],
  now: Date,
): Promise<InvitationView[]> {
  const sites = await db.site.findMany({
    where: { id: { in: [...new Set(rows.flatMap(({ siteIds }) => siteIds))] } },
    select: { id: true, name: true },
  });
  return rows.map(({ id, forName, forEmail, role, siteIds, expiresAt, origin, revision }) => ({
    ...{ id, role, expiresAt, name: forName, email: forEmail, expired: expiresAt <= now },
    linkless: origin === linkNeverMade.origin && revision === linkNeverMade.revision,
    siteNames: sites.filter((site) => siteIds.includes(site.id)).map(({ name }) => name),
  }));
}
