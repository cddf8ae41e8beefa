import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { correctPlaceInput } from './condition.input';
import { openPlace } from './open-place';
import { placeNameTaken } from './place-name-taken';

/** Puts the name or the note of a place right. */
export async function correctPlace(
  context: WriteContext,
  { id, revision, name, note }: z.output<typeof correctPlaceInput>,
): Promise<Result<{ id: string; siteId: string }>> {
  const place = await openPlace(context, id);
  if (!place) return notFound;
  const { siteId } = place;
  if (await placeNameTaken(context, { siteId, name, but: id })) return invalid('name', 'already-there');
  const { count } = await context.db.conditionPlace.updateMany({
    where: { id, revision, voidedAt: null },
    data: { name, note },
  });
  return count === 1 ? ok({ id, siteId }) : { kind: 'conflict', current: place.revision };
}
