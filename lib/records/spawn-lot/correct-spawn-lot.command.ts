import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { prepareSpawnLot } from './prepare-spawn-lot';
import type { correctSpawnLotInput } from './spawn-lot.input';

/** Puts a spawn lot right. Its species stays once batches were made from it. */
export async function correctSpawnLot(
  context: WriteContext,
  input: z.output<typeof correctSpawnLotInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor } = context;
  const lot = await db.spawnLot.findFirst({ where: { id: input.id, voidedAt: null } });
  if (!lot || (actor.role !== 'coordinator' && lot.createdById !== actor.personId)) return notFound;
  const prepared = await prepareSpawnLot(context, input, input.id);
  if (prepared.kind !== 'ok') return prepared;
  if (input.speciesId !== lot.speciesId) {
    const used = await db.spawnShare.count({
      where: { spawnLotId: lot.id, voidedAt: null, batch: { voidedAt: null } },
    });
    if (used > 0) return invalid('speciesId', 'still-in-use', { count: used });
  }
  const code = input.code ?? lot.code;
  if (await db.spawnLot.findFirst({ where: { code, id: { not: input.id } } }))
    return invalid('code', 'code-taken', { code });
  const { count } = await db.spawnLot.updateMany({
    where: { id: input.id, revision: input.revision, voidedAt: null },
    data: { code, ...prepared.value },
  });
  return count === 1 ? ok({ id: input.id }) : { kind: 'conflict', current: lot.revision };
}
