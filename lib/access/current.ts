import 'server-only';
import { redirect } from 'next/navigation';
import { getServerSession } from 'next-auth';
import { cache } from 'react';
import type { MembershipRole } from '@/lib/database/generated/enums';
import type { Actor, Person } from './actor';
import { askedPath } from './asked-path';
import { authOptions } from './auth-options';
import { onTheWay } from './next-path';
import { lookUpSession, type Signed } from './session-lookup';

/** Who is asking, read anew for each request; undefined when nobody is signed in. */
export const currentSigned = cache(async (): Promise<Signed | undefined> => {
  const session = await getServerSession(authOptions());
  return session?.sid ? lookUpSession(session.sid) : undefined;
});

export async function currentActor(): Promise<Actor | undefined> {
  return (await currentSigned())?.actor;
}

/** The signed-in person, or the sign-in page, which then leads back here. */
export async function requirePerson(): Promise<Person> {
  const signed = await currentSigned();
  if (!signed) redirect(onTheWay('/sign-in', await askedPath()));
  return signed.person;
}

/**
 * The actor of a page. Without a session: the sign-in page. With a role that the page is not for: the actor's
 * own first page, since the row policies would show them nothing here.
 */
export async function requireActor(...roles: readonly MembershipRole[]): Promise<Actor> {
  const signed = await currentSigned();
  if (!signed) redirect(onTheWay('/sign-in', await askedPath()));
  if (!signed.actor) redirect(onTheWay('/networks', await askedPath()));
  if (roles.length > 0 && !roles.includes(signed.actor.role)) redirect('/');
  return signed.actor;
}
