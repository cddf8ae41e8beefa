import 'server-only';
import { z } from 'zod';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { Person } from './actor';
import { asPerson } from './scoped-db';

export type OwnNetwork = { readonly networkId: string; readonly name: string; readonly role: string };

export async function listOwnNetworks(person: Person): Promise<OwnNetwork[]> {
  const rows = await asPerson(
    person.personId,
    (db) =>
      db.$queryRaw<{ network_id: string; network_name: string; member_role: string }[]>`
        select network_id::text, network_name, member_role::text from app.my_networks()`,
  );
  return rows.map((row) => ({ networkId: row.network_id, name: row.network_name, role: row.member_role }));
}

/** Opens one of the person's own networks in this session. */
export async function openNetwork(
  person: Person,
  networkId: unknown,
): Promise<Result<{ networkId: string }>> {
  const id = z.uuid().safeParse(networkId);
  if (!id.success) return notFound;
  const own = await listOwnNetworks(person);
  if (!own.some((network) => network.networkId === id.data)) return notFound;
  await asPerson(person.personId, (db) =>
    db.session.updateMany({ where: { id: person.sessionId }, data: { networkId: id.data } }),
  );
  return ok({ networkId: id.data });
}
