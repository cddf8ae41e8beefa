import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { defaultSharing } from './default-sharing';

/** What a site shares, for its members and the coordinator, and who may change it. */
export async function getSharing({ db, actor }: ReadContext, siteId: string) {
  const mine = actor.role === 'member' && actor.siteIds.includes(siteId);
  if (!mine && actor.role !== 'coordinator') return undefined;
  const site = await db.site.findFirst({ where: { id: siteId, voidedAt: null } });
  if (!site) return undefined;
  const row = await db.sharingAgreement.findFirst({ where: { siteId } });
  return {
    site: { id: site.id, name: site.name },
    agreementId: row?.id,
    revision: row?.revision ?? 0,
    withMembers: row?.withMembers ?? defaultSharing.withMembers,
    withFunder: row?.withFunder ?? defaultSharing.withFunder,
    mark: row?.withMembers === 'anonymous' ? row.mark : undefined,
    mayChange: mine,
    /** How many members of the site can sign in; only the coordinator is told, who cannot change it. */
    members: mine
      ? undefined
      : await db.membershipSite.count({
          where: {
            siteId,
            endedAt: null,
            voidedAt: null,
            membership: { role: 'member', endedAt: null, voidedAt: null, person: { disabledAt: null } },
          },
        }),
  };
}

export type SharingView = NonNullable<Awaited<ReturnType<typeof getSharing>>>;
