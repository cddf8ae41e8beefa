import 'server-only';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import { hashPassword, passwordProblem } from './password';
import { asNobody } from './scoped-db';
import { hashToken } from './token';

export async function setupLinkIsOpen(token: string): Promise<boolean> {
  const rows = await asNobody(
    (db) => db.$queryRaw<{ open: boolean }[]>`select app.setup_link_lookup(${hashToken(token)}) as open`,
  );
  return rows[0]?.open ?? false;
}

export type FirstCoordinator = {
  readonly name: string;
  readonly email: string;
  readonly password: string;
  readonly networkName: string;
  readonly networkCode: string;
  readonly timeZone: string;
  readonly region: string;
};

/** Makes a network and its first coordinator from a one-time link. */
export async function takeSetupLink(
  token: string,
  first: FirstCoordinator,
): Promise<Result<{ personId: string; networkId: string }>> {
  const problem = passwordProblem('password', first.password, [first.name, first.email, first.networkName]);
  if (problem) return problem;
  const personId = newId();
  const passwordHash = await hashPassword(first.password);
  const rows = await asNobody(
    (db) => db.$queryRaw<
      { network_id: string }[]
    >`select network_id::text from app.use_setup_link(${hashToken(token)}, ${personId}::uuid,
      ${first.name}, ${first.email}, ${passwordHash}, ${first.networkName}, ${first.networkCode}, ${first.timeZone}, ${first.region})`,
  );
  const networkId = rows[0]?.network_id;
  return networkId ? ok({ personId, networkId }) : notFound;
}
