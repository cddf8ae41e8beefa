import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type InvitationView, invitationViews, waiting } from './invitation-view';

/** An invitation that nobody has accepted yet, for the coordinator; undefined for any other. */
export async function getInvitation(
  context: ReadContext,
  id: string,
  now: Date,
): Promise<InvitationView | undefined> {
  const { db, actor } = context;
  if (actor.role !== 'coordinator') return undefined;
  const row = await db.invitation.findFirst({ where: { id, networkId: actor.networkId, ...waiting } });
  return row ? (await invitationViews(context, [row], now))[0] : undefined;
}
