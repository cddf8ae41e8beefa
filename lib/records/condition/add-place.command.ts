import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { addPlaceInput } from './condition.input';
import { placeNameTaken } from './place-name-taken';

/** Names a room, tent, shelf or corner of a site whose conditions are read. */
export async function addPlace(
  context: WriteContext,
  { id: wanted, siteId, name, note }: z.output<typeof addPlaceInput>,
): Promise<Result<{ id: string; siteId: string }>> {
  const { db, actor, origin } = context;
  const id = wanted ?? newId();
  if (await db.conditionPlace.findFirst({ where: { id, createdById: actor.personId } }))
    return ok({ id, siteId });
  if (!(await db.site.findFirst({ where: { id: siteId, voidedAt: null } }))) return notFound;
  if (await placeNameTaken(context, { siteId, name, but: id })) return invalid('name', 'already-there');
  await db.conditionPlace.create({
    data: { networkId: actor.networkId, id, siteId, name, note, origin, createdById: actor.personId },
  });
  return ok({ id, siteId });
}
