import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { invitationInput } from './invitation.input';

/** Takes an open invitation back; its link opens nothing any more, and the name and address it was for are erased. */
export async function withdrawInvitation(
  { db, actor }: WriteContext,
  { id }: z.output<typeof invitationInput>,
): Promise<Result<{ id: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const [row] = await db.$queryRaw<{ done: boolean }[]>`select app.withdraw_invitation(${id}::uuid) as done`;
  return row?.done ? ok({ id }) : notFound;
}
