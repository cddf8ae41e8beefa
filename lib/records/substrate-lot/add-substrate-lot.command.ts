import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { drawFreeCode } from '../fields/lot-code';
import { prepareSubstrateLot } from './prepare-substrate-lot';
import type { addSubstrateLotInput } from './substrate-lot.input';

/** Adds a lot of material: one delivery of one material from one source. */
export async function addSubstrateLot(
  context: WriteContext,
  input: z.output<typeof addSubstrateLotInput>,
): Promise<Result<{ id: string; code: string }>> {
  const { db, actor, origin } = context;
  if (actor.role === 'funder') return notFound;
  const id = input.id ?? newId();
  const repeat = await db.substrateLot.findFirst({ where: { id, createdById: actor.personId } });
  if (repeat) return ok({ id, code: repeat.code });
  const prepared = await prepareSubstrateLot(context, input);
  if (prepared.kind !== 'ok') return prepared;
  const taken = async (code: string) => (await db.substrateLot.findFirst({ where: { code } })) !== null;
  if (input.code !== null && (await taken(input.code)))
    return invalid('code', 'code-taken', { code: input.code });
  const code = input.code ?? (await drawFreeCode('M', taken));
  await db.substrateLot.create({
    data: { networkId: actor.networkId, id, code, ...prepared.value, origin, createdById: actor.personId },
  });
  return ok({ id, code });
}
