import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { withdrawTokenInput } from './token.input';

/** Withdraws a token for good, from the next request on: one's own, or as coordinator any of the network. */
export async function withdrawToken(
  { db, actor, now }: WriteContext,
  { id, revision, reason }: z.output<typeof withdrawTokenInput>,
): Promise<Result<{ id: string }>> {
  if (actor.token !== undefined) return notFound;
  const select = { revision: true, voidedAt: true } as const;
  const standing = await db.apiToken.findFirst({ where: { id }, select });
  if (!standing) return notFound;
  if (standing.voidedAt !== null) return ok({ id });
  const { count } = await db.apiToken.updateMany({
    where: { id, revision, voidedAt: null },
    data: { voidedAt: now, voidReason: reason },
  });
  if (count === 1) return ok({ id });
  const after = await db.apiToken.findFirst({ where: { id }, select });
  return after === null || after.revision === revision
    ? notFound
    : { kind: 'conflict', current: after.revision };
}
