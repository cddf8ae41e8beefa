import type { Actor } from '@/lib/access/actor';
import { joinAsNew } from '@/lib/access/join';
import { joinInput } from '@/lib/access/join.input';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { lookUpSession } from '@/lib/access/session-lookup';
import { openSession } from '@/lib/access/sign-in';
import { invitationInput } from '@/lib/records/person/invitation.input';
import { listInvitations } from '@/lib/records/person/list-invitations.query';
import { renewInvitation } from '@/lib/records/person/renew-invitation.command';

type Newcomer = { readonly invited: string; readonly email?: string; readonly name: string };

/** Joins by a link made anew for the invitation of one address, with an account of the same or another one. */
export async function joinByInvitation(
  coordinator: Actor,
  { invited, email = invited, name }: Newcomer,
): Promise<Actor> {
  const open = await readAs(coordinator, (context) => listInvitations(context, null, new Date()));
  const id = open.invitations.find((one) => one.email === invited)?.id ?? '';
  const renewed = await runAs(coordinator, invitationInput, renewInvitation, { id });
  if (renewed.kind !== 'ok') throw new Error(JSON.stringify(renewed));
  const given = joinInput.parse({ name, email, password: 'straw-bucket-lantern' });
  const joined = await joinAsNew(renewed.value.token, given);
  if (joined.kind !== 'ok') throw new Error(JSON.stringify(joined));
  const signed = await lookUpSession(await openSession(joined.value.personId, 'device'));
  if (!signed?.actor) throw new Error('cannot sign in');
  return signed.actor;
}
