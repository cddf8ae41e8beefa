import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { insertRows } from '@/lib/access/insert-rows';
import { newId } from '@/lib/base/new-id';
import type { PreparedBatch } from './prepare-batch';

type Children = {
  readonly batch: { readonly id: string; readonly siteId: string };
  readonly prepared: PreparedBatch;
};

/** Adds the components and spawn shares of batches. */
export async function addBatchChildren(context: WriteContext, batches: readonly Children[]): Promise<void> {
  const { actor, origin } = context;
  const owner = ({ batch }: Children) => ({
    ...{ networkId: actor.networkId, batchId: batch.id, siteId: batch.siteId },
    ...{ origin, createdById: actor.personId },
  });
  await insertRows(
    context,
    'batch_component',
    batches.flatMap((one) =>
      one.prepared.resolved.components.map(({ input, lot, method, run }) => ({
        ...owner(one),
        id: newId(),
        substrateLotId: lot.id,
        methodId: method.id,
        treatmentRunId: run?.id ?? null,
        role: input.role,
        grams: input.mass,
        massStage: input.massStage,
      })),
    ),
  );
  await insertRows(
    context,
    'spawn_share',
    batches.flatMap((one) =>
      one.prepared.resolved.spawn.map(({ lot, grams }) => ({
        ...owner(one),
        ...{ id: newId(), spawnLotId: lot.id, grams },
      })),
    ),
  );
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
