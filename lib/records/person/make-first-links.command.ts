import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { newInvitationLink } from './invitation-link';
import { linkNeverMade } from './link-never-made';

export type FirstLink = {
  readonly id: string;
  readonly name: string | null;
  readonly email: string | null;
  readonly token: string;
};

const most = 500;

/** Makes the first link of invitations that came from a table, all at once; links handed over before go on working. */
export async function makeFirstLinks({ db, actor, now }: WriteContext): Promise<Result<FirstLink[]>> {
  if (actor.role !== 'coordinator') return notFound;
  const rows = await db.invitation.findMany({
    where: { networkId: actor.networkId, ...linkNeverMade },
    orderBy: { id: 'asc' },
    take: most,
  });
  const made: FirstLink[] = [];
  for (const { id, forName, forEmail } of rows) {
    const { token, kept } = newInvitationLink(now);
    // Somebody else may have made one since.
    const { count } = await db.invitation.updateMany({ where: { id, ...linkNeverMade }, data: kept });
    if (count === 1) made.push({ id, name: forName, email: forEmail, token });
  }
  return ok(made);
}
