import type { Actor } from '@/lib/access/actor';
import { asNobody } from '@/lib/access/scoped-db';
import { lookUpSession } from '@/lib/access/session-lookup';
import { openSession } from '@/lib/access/sign-in';

/** The coordinator with this address, signed in. */
export async function coordinatorOf(email: string): Promise<Actor> {
  const [found] = await asNobody(
    (db) => db.$queryRaw<{ id: string }[]>`select person_id::text as id from app.sign_in_lookup(${email})`,
  );
  const signed = found && (await lookUpSession(await openSession(found.id, 'bench')));
  if (!signed?.actor) throw new Error(`nobody signs in as ${email}`);
  return signed.actor;
}
