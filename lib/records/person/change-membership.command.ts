import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { changeMembershipInput } from './change-membership.input';

/** Changes role, sites or standing of a person in this network; it acts at their next request. */
export async function changeMembership(
  context: WriteContext,
  input: z.output<typeof changeMembershipInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, now, origin } = context;
  if (actor.role !== 'coordinator') return notFound;
  const membership = await db.membership.findFirst({
    where: { id: input.id, networkId: actor.networkId, voidedAt: null, erasedAt: null },
    include: { sites: true },
  });
  if (!membership) return notFound;
  const stops = input.state === 'ended' || input.role !== 'coordinator';
  if (membership.role === 'coordinator' && stops && (await isLastCoordinator(context, input.id))) {
    return invalid('role', 'last-coordinator');
  }
  const siteIds = input.role === 'member' ? input.siteIds : [];
  if (input.role === 'member' && input.state === 'active' && siteIds.length === 0)
    return invalid('siteIds', 'missing-choice');
  const known = await db.site.count({ where: { id: { in: siteIds }, voidedAt: null, leftAt: null } });
  if (known !== new Set(siteIds).size) return invalid('siteIds', 'not-an-option');
  const changed = await db.membership.updateMany({
    where: { id: input.id, revision: input.revision },
    data: { role: input.role, endedAt: input.state === 'ended' ? (membership.endedAt ?? now) : null },
  });
  if (changed.count === 0) return { kind: 'conflict', current: membership.revision };
  for (const row of membership.sites) {
    const wanted = siteIds.includes(row.siteId);
    if (wanted !== (row.endedAt === null)) {
      await db.membershipSite.updateMany({ where: { id: row.id }, data: { endedAt: wanted ? null : now } });
    }
  }
  const had = new Set(membership.sites.map(({ siteId }) => siteId));
  await db.membershipSite.createMany({
    data: siteIds
      .filter((siteId) => !had.has(siteId))
      .map((siteId) => ({
        networkId: actor.networkId,
        id: newId(),
        membershipId: input.id,
        siteId,
        origin,
        createdById: actor.personId,
      })),
  });
  return ok({ id: input.id });
}

async function isLastCoordinator({ db, actor }: WriteContext, id: string): Promise<boolean> {
  const others = await db.membership.count({
    where: {
      networkId: actor.networkId,
      role: 'coordinator',
      endedAt: null,
      voidedAt: null,
      id: { not: id },
    },
  });
  return others === 0;
}
