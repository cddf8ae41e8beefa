import 'server-only';
import type { Actor, Person } from './actor';
import { asPersonIn } from './scoped-db';

/** The person as actor in one of their own networks, whichever is open in the session; undefined in any other. */
export async function actorInNetwork(person: Person, networkId: string): Promise<Actor | undefined> {
  const found = await asPersonIn(person.personId, networkId, async (db) => {
    const membership = await db.membership.findFirst({
      where: { networkId, personId: person.personId, endedAt: null, voidedAt: null },
    });
    const network = membership && (await db.network.findFirst({ where: { id: networkId } }));
    if (!membership || !network) return undefined;
    const sites = await db.membershipSite.findMany({
      where: { networkId, membershipId: membership.id, endedAt: null },
    });
    return { membership, network, sites };
  });
  if (!found) return undefined;
  const { membership, network, sites } = found;
  return {
    ...person,
    networkId,
    networkName: network.name,
    networkTimeZone: network.timeZone,
    membershipId: membership.id,
    role: membership.role,
    siteIds: membership.role === 'member' ? sites.map(({ siteId }) => siteId) : [],
  };
}
