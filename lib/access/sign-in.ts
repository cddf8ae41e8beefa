import 'server-only';
import { newId } from '@/lib/base/new-id';
import { invalid, ok, type Result } from '@/lib/base/result';
import { passwordFits } from './password';
import { asNobody, asPerson } from './scoped-db';

const sessionDays = 90;
type Found = { person_id: string; password_hash: string; disabled: boolean; locked: boolean };

/**
 * Checks e-mail and password and opens a session in the person's first network. Unknown people, wrong
 * passwords and disabled people get the same answer, after the same work.
 */
export async function signIn(
  email: string,
  password: string,
  device: string | undefined,
): Promise<Result<{ sessionId: string }>> {
  const [found] = await asNobody(
    (db) =>
      db.$queryRaw<
        Found[]
      >`select person_id::text, password_hash, disabled, locked from app.sign_in_lookup(${email})`,
  );
  const fits = await passwordFits(password, found?.password_hash);
  if (found?.locked) return invalid('email', 'locked', { minutes: 15 });
  if (!found || !fits || found.disabled) {
    if (found && !fits)
      await asNobody((db) => db.$queryRaw`select app.note_sign_in_failure(${found.person_id}::uuid)::text`);
    return invalid('email', 'wrong-sign-in');
  }
  return ok({ sessionId: await openSession(found.person_id, device) });
}

/** A new session for a person whose identity has been proved. */
export async function openSession(personId: string, device?: string): Promise<string> {
  const id = newId();
  await asPerson(personId, async (db) => {
    await db.account.updateMany({ where: { personId }, data: { failedCount: 0, lockedUntil: null } });
    const networks = await db.$queryRaw<
      { network_id: string }[]
    >`select network_id::text from app.my_networks()`;
    await db.session.create({
      data: {
        id,
        personId,
        networkId: networks[0]?.network_id ?? null,
        device: device?.slice(0, 200) ?? null,
        expiresAt: new Date(Date.now() + sessionDays * 86_400_000),
      },
    });
  });
  return id;
}
