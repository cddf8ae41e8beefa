import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import type { PreparedBatch } from './prepare-batch';

/** Adds the components and spawn shares of a batch. */
export async function addBatchChildren(
  { db, actor, origin }: WriteContext,
  batch: { readonly id: string; readonly siteId: string },
  { resolved }: PreparedBatch,
): Promise<void> {
  const row = {
    networkId: actor.networkId,
    batchId: batch.id,
    siteId: batch.siteId,
    origin,
    createdById: actor.personId,
  };
  await db.batchComponent.createMany({
    data: resolved.components.map(({ input, lot, method, run }) => ({
      ...row,
      id: newId(),
      substrateLotId: lot.id,
      methodId: method.id,
      treatmentRunId: run?.id ?? null,
      role: input.role,
      grams: input.mass,
      massStage: input.massStage,
    })),
  });
  await db.spawnShare.createMany({
    data: resolved.spawn.map(({ lot, grams }) => ({ ...row, id: newId(), spawnLotId: lot.id, grams })),
  });
}

/** Voids the components and spawn shares of a batch before a correction adds the new ones. */
export async function voidBatchChildren(
  { db, now }: WriteContext,
  batchId: string,
  reason: string,
): Promise<void> {
  const replaced = { where: { batchId, voidedAt: null }, data: { voidedAt: now, voidReason: reason } };
  await db.batchComponent.updateMany(replaced);
  await db.spawnShare.updateMany(replaced);
}
