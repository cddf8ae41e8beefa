import { randomUUID } from 'node:crypto';
import type { Actor } from '@/lib/access/actor';
import { joinAsNew } from '@/lib/access/join';
import { joinInput } from '@/lib/access/join.input';
import { runAs } from '@/lib/access/run-command';
import { lookUpSession } from '@/lib/access/session-lookup';
import { openSession } from '@/lib/access/sign-in';
import { invitePerson } from '@/lib/records/person/invite-person.command';
import { invitePersonInput } from '@/lib/records/person/invite-person.input';

/** Somebody who joins a network by an invitation that names them, and signs in. */
export async function newcomer(
  coordinator: Actor,
  who: {
    readonly name: string;
    readonly role: 'member' | 'coordinator';
    readonly siteIds?: readonly string[];
  },
): Promise<Actor & { readonly email: string }> {
  const { name, role, siteIds = [] } = who;
  const email = `${randomUUID()}@example.org`;
  const invited = await runAs(coordinator, invitePersonInput, invitePerson, { role, siteIds, forName: name });
  if (invited.kind !== 'ok') throw new Error(JSON.stringify(invited));
  const joined = await joinAsNew(
    invited.value.token,
    joinInput.parse({ name, email, password: 'straw-bucket-lantern' }),
  );
  if (joined.kind !== 'ok') throw new Error(JSON.stringify(joined));
  const signed = await lookUpSession(await openSession(joined.value.personId, `device of ${name}`));
  if (!signed?.actor) throw new Error('the newcomer cannot sign in');
  return { ...signed.actor, email };
}
