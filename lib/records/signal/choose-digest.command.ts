import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { chooseDigestInput } from './choose-digest.input';

/** A coordinator's own choice whether the week's signals come by e-mail; off until it is made. */
export async function chooseDigest(
  { db, actor, origin }: WriteContext,
  input: z.output<typeof chooseDigestInput>,
): Promise<Result<{ wanted: boolean }>> {
  if (actor.role !== 'coordinator') return notFound;
  const wanted = input.wanted === 'yes';
  const own = { personId: actor.personId, voidedAt: null };
  const { count } = await db.digestChoice.updateMany({ where: own, data: { wanted } });
  if (count === 0) {
    const { networkId, personId } = actor;
    await db.digestChoice.create({
      data: { networkId, id: newId(), personId, wanted, origin, createdById: personId },
    });
  }
  return ok({ wanted });
}
