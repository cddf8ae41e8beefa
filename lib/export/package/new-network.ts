import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { lookUpSession } from '@/lib/access/session-lookup';
import { takeSetupLink } from '@/lib/access/setup-link';
import { openSession } from '@/lib/access/sign-in';
import { hashToken, newToken } from '@/lib/access/token';
import { connectTo } from '@/lib/database/startup-check';

type NetworkFacts = {
  readonly name: string;
  readonly code: string;
  readonly timeZone: string;
  readonly region: string;
};

/**
 * Makes a network without any record, and its first coordinator with a password that is told once. For the operator,
 * who has the owner's address of the database.
 */
export async function newNetwork(
  { name, code, timeZone, region }: NetworkFacts,
  coordinator: { readonly name: string; readonly email: string },
): Promise<{ readonly actor: Actor; readonly password: string }> {
  const token = newToken();
  const password = newToken();
  const owner = await connectTo('DATABASE_OWNER_URL', process.env.DATABASE_OWNER_URL);
  try {
    await owner.query("select app.make_setup_link($1, '10 minutes')", [hashToken(token)]);
  } finally {
    await owner.end();
  }
  const first = { ...coordinator, password, networkName: name, networkCode: code, timeZone, region };
  const made = await takeSetupLink(token, first);
  if (made.kind !== 'ok') throw new Error(`no network was made: ${JSON.stringify(made)}`);
  const signed = await lookUpSession(await openSession(made.value.personId, 'loading of an archive'));
  if (!signed?.actor) throw new Error('the new network cannot be opened');
  return { actor: signed.actor, password };
}
