import { randomUUID } from 'node:crypto';
import { Client } from 'pg';
import type { Actor } from '@/lib/access/actor';
import { writeAs } from '@/lib/access/scoped-db';
import type { MembershipRole } from '@/lib/database/generated/enums';
import { addDefaults } from '@/lib/records/network/add-defaults.command';

const timeZone = 'America/New_York';

export type Growers = {
  /** Coordinator of the Larkmoor Growers' Network. */
  readonly coordinator: Actor;
  /** Member at Mill Lane Garden. */
  readonly member: Actor;
  /** Member at Quarry Farm only. */
  readonly neighbour: Actor;
  readonly funder: Actor;
  /** Coordinator of the Saltbrook network, which has nothing to do with Larkmoor. */
  readonly stranger: Actor;
  readonly millLane: string;
  readonly quarry: string;
  readonly saltbrookSite: string;
};

type Insert = (sql: string, values: readonly unknown[]) => Promise<void>;

async function network(insert: Insert, name: string, code: string): Promise<string> {
  const id = randomUUID();
  await insert('insert into network (id, name, code, time_zone) values ($1, $2, $3, $4)', [
    id,
    name,
    code,
    timeZone,
  ]);
  return id;
}

async function site(insert: Insert, networkId: string, name: string, code: string): Promise<string> {
  const id = randomUUID();
  await insert(
    `insert into site (network_id, id, code, name, kind, time_zone) values ($1, $2, $3, $4, 'farm', $5)`,
    [networkId, id, code, name, timeZone],
  );
  return id;
}

async function actor(
  insert: Insert,
  who: { name: string; networkId: string; networkName: string; role: MembershipRole; siteIds: string[] },
): Promise<Actor> {
  const personId = randomUUID();
  const membershipId = randomUUID();
  await insert('insert into person (id) values ($1)', [personId]);
  await insert('insert into person_contact (person_id, name, email) values ($1, $2, $3)', [
    personId,
    who.name,
    `${personId}@example.org`,
  ]);
  await insert(
    'insert into membership (network_id, id, person_id, role) values ($1, $2, $3, $4::membership_role)',
    [who.networkId, membershipId, personId, who.role],
  );
  for (const siteId of who.siteIds)
    await insert('insert into membership_site (network_id, membership_id, site_id) values ($1, $2, $3)', [
      who.networkId,
      membershipId,
      siteId,
    ]);
  const { name, networkId, networkName, role, siteIds } = who;
  return {
    ...{ personId, name, networkId, networkName, role, siteIds, membershipId },
    sessionId: randomUUID(),
    language: 'en',
    region: 'en-US',
    massUnit: 'kg',
    temperatureUnit: 'celsius',
    volumeUnit: 'litre',
    networkTimeZone: timeZone,
  };
}

/**
 * Two networks with their people, sites and default species, materials, methods and windows; `tag` sets several pairs
 * of one database apart.
 */
export async function growers(superuser: string, tag = ''): Promise<Growers> {
  const client = new Client({ connectionString: superuser });
  await client.connect();
  const insert: Insert = async (sql, values) => {
    await client.query(sql, [...values]);
  };
  try {
    const larkmoor = await network(insert, "Larkmoor Growers' Network", `LARK${tag}`);
    const saltbrook = await network(insert, 'Saltbrook Growers', `SALT${tag}`);
    const millLane = await site(insert, larkmoor, 'Mill Lane Garden', 'MILL');
    const quarry = await site(insert, larkmoor, 'Quarry Farm', 'QUARRY');
    const saltbrookSite = await site(insert, saltbrook, 'Saltbrook Sheds', 'SHEDS');
    const of = (name: string, role: MembershipRole, siteIds: string[] = []) =>
      actor(insert, { name, networkId: larkmoor, networkName: "Larkmoor Growers' Network", role, siteIds });
    const coordinator = await of('Wren Castellan', 'coordinator');
    const member = await of('Ives Marrow', 'member', [millLane]);
    const neighbour = await of('Posy Underhill', 'member', [quarry]);
    const funder = await of('Teal Abernethy', 'funder');
    const stranger = await actor(insert, {
      name: 'Sorrel Vane',
      networkId: saltbrook,
      networkName: 'Saltbrook Growers',
      role: 'coordinator',
      siteIds: [],
    });
    for (const one of [coordinator, stranger]) await writeAs(one, {}, addDefaults);
    return { coordinator, member, neighbour, funder, stranger, millLane, quarry, saltbrookSite };
  } finally {
    await client.end();
  }
}
