import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { agreeSharingInput } from './agree-sharing.input';

/** Says what a site shares. Only its own members may; the coordinator reads it. */
export async function agreeSharing(
  { db, actor, origin }: WriteContext,
  { id: siteId, revision, withMembers, withFunder }: z.output<typeof agreeSharingInput>,
): Promise<Result<{ id: string }>> {
  if (actor.role !== 'member' || !actor.siteIds.includes(siteId)) return notFound;
  if (!(await db.site.findFirst({ where: { id: siteId, voidedAt: null, leftAt: null } }))) return notFound;
  // Two who agree for the first time at once come one after the other.
  await db.$executeRaw`select pg_advisory_xact_lock(hashtextextended(${`sharing ${siteId}`}, 0))`;
  const row = await db.sharingAgreement.findFirst({ where: { siteId } });
  if ((row?.revision ?? 0) !== revision) return { kind: 'conflict', current: row?.revision ?? 0 };
  if (row === null) {
    const place = { networkId: actor.networkId, id: newId(), siteId };
    await db.sharingAgreement.create({
      data: { ...place, withMembers, withFunder, origin, createdById: actor.personId },
    });
  } else if (row.withMembers !== withMembers || row.withFunder !== withFunder) {
    await db.sharingAgreement.updateMany({ where: { id: row.id }, data: { withMembers, withFunder } });
  }
  return ok({ id: siteId });
}
