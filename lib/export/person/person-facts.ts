import type { ReadContext } from '@/lib/access/context';

/** What is kept of a person besides their records: contact, choices, roles and sign-ins, as JSON takes it. */
export async function personFacts({ db, actor }: ReadContext, personId: string, now: Date) {
  const person = await db.person.findFirst({ where: { id: personId }, include: { contact: true } });
  const memberships = await db.membership.findMany({
    where: { networkId: actor.networkId, personId },
    include: { sites: { select: { siteId: true, endedAt: true } } },
  });
  // A session is its person's own: a coordinator who saves this for somebody sees none.
  const sessions = await db.session.findMany({
    where: { personId },
    select: { device: true, createdAt: true, lastSeenAt: true, endedAt: true },
    orderBy: { createdAt: 'asc' },
  });
  return {
    savedAt: now.toISOString(),
    network: actor.networkName,
    name: person?.contact?.name ?? null,
    email: person?.contact?.email ?? null,
    language: person?.language,
    region: person?.region,
    units: [person?.massUnit, person?.temperatureUnit, person?.volumeUnit],
    memberships: memberships.map(({ role, createdAt, endedAt, sites }) => ({
      ...{ role, since: createdAt.toISOString(), until: endedAt?.toISOString() ?? null },
      sites: sites.map(({ siteId, endedAt: left }) => ({ siteId, until: left?.toISOString() ?? null })),
    })),
    sessions: sessions.map(({ device, createdAt, lastSeenAt, endedAt }) => ({
      ...{ device, begun: createdAt.toISOString(), lastSeen: lastSeenAt.toISOString() },
      ended: endedAt?.toISOString() ?? null,
    })),
  };
}
