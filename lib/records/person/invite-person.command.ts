import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { newInvitationLink } from './invitation-link';
import type { invitePersonInput } from './invite-person.input';

/** Why nobody is invited by this address: somebody with it is here, or an invitation for it is open. */
async function knownAddress({ db, actor }: WriteContext, email: string): Promise<string | undefined> {
  const here = await db.membership.findFirst({
    where: { networkId: actor.networkId, endedAt: null, voidedAt: null, person: { contact: { email } } },
    select: { id: true },
  });
  if (here) return 'already-member';
  // Whoever was invited by this address may have joined with another one.
  const accepted = await db.invitation.findMany({
    where: { forEmail: email, acceptedAt: { not: null }, voidedAt: null },
    select: { acceptedById: true },
  });
  const joined = await db.membership.findFirst({
    where: {
      ...{ networkId: actor.networkId, endedAt: null, voidedAt: null },
      personId: { in: accepted.flatMap(({ acceptedById }) => acceptedById ?? []) },
    },
    select: { id: true },
  });
  if (joined) return 'already-member';
  const open = await db.invitation.findFirst({
    where: { forEmail: email, acceptedAt: null, voidedAt: null },
    select: { id: true },
  });
  return open ? 'already-invited' : undefined;
}

/** Makes an invitation link. The token is answered once and stored only as a hash. */
export async function invitePerson(
  context: WriteContext,
  input: z.output<typeof invitePersonInput>,
): Promise<Result<{ id: string; token: string }>> {
  const { db, actor, origin, now } = context;
  if (actor.role !== 'coordinator') return notFound;
  const siteIds = input.role === 'member' ? input.siteIds : [];
  if (input.role === 'member' && siteIds.length === 0) return invalid('siteIds', 'missing-choice');
  const known = await db.site.count({ where: { id: { in: siteIds }, voidedAt: null, leftAt: null } });
  if (known !== new Set(siteIds).size) return invalid('siteIds', 'not-an-option');
  const { forName, forEmail, role } = input;
  const refused = forEmail === null ? undefined : await knownAddress(context, forEmail);
  if (refused !== undefined) return invalid('forEmail', refused);
  const { token, kept } = newInvitationLink(now);
  const id = newId();
  await db.invitation.create({
    data: {
      networkId: actor.networkId,
      ...{ id, role, siteIds, forName, forEmail, ...kept, origin },
      createdById: actor.personId,
    },
  });
  return ok({ id, token });
}
