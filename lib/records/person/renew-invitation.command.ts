import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { invitationInput } from './invitation.input';
import { newInvitationLink } from './invitation-link';

/** Makes a new link for an open invitation, also for one that ran out; the link before it opens nothing any more. */
export async function renewInvitation(
  { db, actor, now }: WriteContext,
  { id }: z.output<typeof invitationInput>,
): Promise<Result<{ id: string; token: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const { token, kept } = newInvitationLink(now);
  const { count } = await db.invitation.updateMany({
    where: { id, networkId: actor.networkId, acceptedAt: null, voidedAt: null },
    data: kept,
  });
  return count === 1 ? ok({ id, token }) : notFound;
}
