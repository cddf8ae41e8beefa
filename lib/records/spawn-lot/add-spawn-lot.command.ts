import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { drawFreeCode } from '../fields/lot-code';
import { prepareSpawnLot } from './prepare-spawn-lot';
import type { addSpawnLotInput } from './spawn-lot.input';

/** Adds a spawn lot: what one maker made in one go of one strain. */
export async function addSpawnLot(
  context: WriteContext,
  input: z.output<typeof addSpawnLotInput>,
): Promise<Result<{ id: string; code: string }>> {
  const { db, actor, origin } = context;
  if (actor.role === 'funder') return notFound;
  const id = input.id ?? newId();
  const repeat = await db.spawnLot.findFirst({ where: { id, createdById: actor.personId } });
  if (repeat) return ok({ id, code: repeat.code });
  const prepared = await prepareSpawnLot(context, input, id);
  if (prepared.kind !== 'ok') return prepared;
  const taken = async (code: string) => (await db.spawnLot.findFirst({ where: { code } })) !== null;
  if (input.code !== null && (await taken(input.code)))
    return invalid('code', 'code-taken', { code: input.code });
  const code = input.code ?? (await drawFreeCode('S', taken));
  await db.spawnLot.create({
    data: { networkId: actor.networkId, id, code, ...prepared.value, origin, createdById: actor.personId },
  });
  return ok({ id, code });
}
