import 'server-only';
import type { z } from 'zod';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { refusalOf } from '@/lib/database/database-error';
import type { MembershipRole } from '@/lib/database/generated/enums';
import type { Person } from './actor';
import { failureOfError } from './failure-of-error';
import type { joinInput } from './join.input';
import { hashPassword, passwordProblem } from './password';
import { asNobody, asPerson } from './scoped-db';
import { hashToken } from './token';

export type OpenInvitation = {
  readonly networkName: string;
  readonly role: MembershipRole;
  readonly forName: string | null;
};

export async function lookUpInvitation(token: string): Promise<OpenInvitation | undefined> {
  const [row] = await asNobody(
    (db) => db.$queryRaw<{ network_name: string; member_role: MembershipRole; for_name: string | null }[]>`
      select network_name, member_role::text, for_name from app.invitation_lookup(${hashToken(token)})`,
  );
  return row ? { networkName: row.network_name, role: row.member_role, forName: row.for_name } : undefined;
}

/** Joins somebody new: makes the person and the membership in one step. */
export async function joinAsNew(
  token: string,
  input: z.output<typeof joinInput>,
): Promise<Result<{ personId: string; networkId: string }>> {
  const problem = passwordProblem('password', input.password, [input.name, input.email]);
  if (problem) return problem;
  const personId = newId();
  const passwordHash = await hashPassword(input.password);
  try {
    const [row] = await asNobody(
      (db) => db.$queryRaw<
        { network_id: string }[]
      >`select network_id::text from app.accept_invitation(${hashToken(token)},
        ${personId}::uuid, ${input.name}, ${input.email}, ${passwordHash})`,
    );
    return row ? ok({ personId, networkId: row.network_id }) : notFound;
  } catch (error) {
    if (refusalOf(error)?.kind === 'duplicate') return invalid('email', 'email-known');
    throw error;
  }
}

/** Joins somebody who is signed in already; refused where the last coordinator of a network would become something else. */
export async function joinAsKnown(token: string, person: Person): Promise<Result<{ networkId: string }>> {
  try {
    const [row] = await asPerson(
      person.personId,
      (db) => db.$queryRaw<
        { network_id: string }[]
      >`select network_id::text from app.accept_invitation(${hashToken(token)},
        ${person.personId}::uuid, null, null, null)`,
    );
    return row ? ok({ networkId: row.network_id }) : notFound;
  } catch (error) {
    const failure = failureOfError(error);
    if (failure === undefined) throw error;
    return failure;
  }
}
