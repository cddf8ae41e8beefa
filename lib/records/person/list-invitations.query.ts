import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { isId } from '../fields/id-field';
import { invitationViews, waiting } from './invitation-view';
import { linkNeverMade } from './link-never-made';

export const invitationsPerPage = 50;

/**
 * Invitations that nobody has accepted yet, also those that ran out, newest first, a page at a time; for the coordinator.
 *
 * @param after id of the last one on the page before; anything else is the first page.
 * @returns the page, of how many in all nobody has seen a link, and where the next page begins.
 */
export async function listInvitations(context: ReadContext, after: string | null, now: Date) {
  const { db, actor } = context;
  if (actor.role !== 'coordinator') return { invitations: [], linkless: 0, next: undefined };
  const { networkId } = actor;
  const rows = await db.invitation.findMany({
    where: {
      ...{ networkId, ...waiting },
      ...(after !== null && isId(after) ? { id: { lt: after } } : {}),
    },
    orderBy: { id: 'desc' },
    take: invitationsPerPage + 1,
  });
  const shown = rows.slice(0, invitationsPerPage);
  return {
    invitations: await invitationViews(context, shown, now),
    linkless: await db.invitation.count({ where: { networkId, ...linkNeverMade } }),
    next: rows.length > invitationsPerPage ? shown.at(-1)?.id : undefined,
  };
}
