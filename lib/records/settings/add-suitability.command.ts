import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { addSuitabilityInput } from './settings.input';

/** Says for the first time whether two of species, material and method suit each other in this network. */
export async function addSuitability(
  { db, actor, origin }: WriteContext,
  input: z.output<typeof addSuitabilityInput>,
): Promise<Result<{ id: string; speciesId: string | null }>> {
  if (actor.role !== 'coordinator') return notFound;
  const { speciesId, materialKind, methodKind } = input;
  const id = input.id ?? newId();
  if (await db.suitability.findFirst({ where: { id, createdById: actor.personId } }))
    return ok({ id, speciesId });
  const named = [speciesId, materialKind, methodKind].filter((one) => one !== null);
  if (named.length !== 2) return invalid('materialKind', 'name-two');
  if (speciesId !== null && !(await db.species.findFirst({ where: { id: speciesId, voidedAt: null } })))
    return invalid('speciesId', 'not-found');
  const pair = { speciesId, materialKind, methodKind };
  if (await db.suitability.findFirst({ where: { ...pair, voidedAt: null } }))
    return invalid('materialKind', 'already-there');
  const { verdict, reasonEn, reasonEs } = input;
  await db.suitability.create({
    data: {
      networkId: actor.networkId,
      id,
      ...pair,
      ...{ verdict, reasonEn, reasonEs },
      origin,
      createdById: actor.personId,
    },
  });
  return ok({ id, speciesId });
}
