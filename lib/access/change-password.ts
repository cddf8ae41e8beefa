import 'server-only';
import { invalid, ok, type Result } from '@/lib/base/result';
import type { Person } from './actor';
import { hashPassword, passwordFits, passwordProblem } from './password';
import { asPerson } from './scoped-db';

/** Replaces the password and ends every other session of the person. */
export async function changePassword(person: Person, current: string, next: string): Promise<Result<null>> {
  const account = await asPerson(person.personId, (db) =>
    db.account.findFirst({ where: { personId: person.personId } }),
  );
  if (!(await passwordFits(current, account?.passwordHash)))
    return invalid('currentPassword', 'wrong-password');
  const problem = passwordProblem('newPassword', next, [person.name]);
  if (problem) return problem;
  const passwordHash = await hashPassword(next);
  await asPerson(person.personId, async (db) => {
    await db.account.updateMany({
      where: { personId: person.personId },
      data: { passwordHash, passwordChangedAt: new Date() },
    });
    await db.session.updateMany({
      where: { personId: person.personId, endedAt: null, id: { not: person.sessionId } },
      data: { endedAt: new Date() },
    });
  });
  return ok(null);
}
