import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';

type Owner = { readonly id: string; readonly batchId: string; readonly siteId: string };

/** Names the units of a loss. A name left over from a voided loss is given free first. */
export async function nameLostUnits(
  { db, actor, origin, now }: WriteContext,
  { id, batchId, siteId }: Owner,
  numbers: readonly number[],
): Promise<void> {
  if (numbers.length === 0) return;
  await db.lossUnit.updateMany({
    where: { batchId, unitNumber: { in: [...numbers] }, voidedAt: null, loss: { voidedAt: { not: null } } },
    data: { voidedAt: now, voidReason: 'its loss was voided' },
  });
  await db.lossUnit.createMany({
    data: numbers.map((unitNumber) => ({
      networkId: actor.networkId,
      id: newId(),
      lossId: id,
      batchId,
      siteId,
      unitNumber,
      origin,
      createdById: actor.personId,
    })),
  });
}
