import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';

type Owner = { readonly id: string; readonly batchId: string; readonly siteId: string };

/** Names the units of a finding. A name left over from a voided finding is given free first. */
export async function nameFoundUnits(
  { db, actor, origin, now }: WriteContext,
  { id, batchId, siteId }: Owner,
  numbers: readonly number[],
): Promise<void> {
  if (numbers.length === 0) return;
  await db.findingUnit.updateMany({
    where: {
      batchId,
      unitNumber: { in: [...numbers] },
      voidedAt: null,
      finding: { voidedAt: { not: null } },
    },
    data: { voidedAt: now, voidReason: 'its finding was voided' },
  });
  await db.findingUnit.createMany({
    data: numbers.map((unitNumber) => ({
      networkId: actor.networkId,
      id: newId(),
      findingId: id,
      batchId,
      siteId,
      unitNumber,
      origin,
      createdById: actor.personId,
    })),
  });
}
