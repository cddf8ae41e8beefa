import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { operations } from '@/lib/api/operation/operations';
import { makeWorld, type World } from '../access/world';
import { testDatabase } from '../support/database';
import { send, tokenOf } from './api-world';
import { type Case, casesOf, type Tried } from './cases';
import { checkAnswer, type Reply } from './document-client';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let world: World;
let cases: ReadonlyMap<string, Case>;
const tokens = new Map<string, string>();

/** Who is refused what Mill Lane's member may do, in one network or out of it. */
const refusedAskers = [
  'neighbour',
  'stranger',
  'narrowed coordinator',
  'reads only',
  'withdrawn',
  'run out',
  'left',
  'locked out',
  'nobody',
] as const;
type Asker = (typeof refusedAskers)[number];
/** These are told that the token does not work; the others that there is nothing. */
const withoutToken: readonly Asker[] = ['withdrawn', 'run out', 'left', 'locked out', 'nobody'];

async function another(of: Actor): Promise<Actor> {
  const personId = crypto.randomUUID();
  const membershipId = crypto.randomUUID();
  await admin.query('insert into person (id) values ($1)', [personId]);
  await admin.query(
    `insert into membership (network_id, id, person_id, role) values ($1, $2, $3, 'coordinator')`,
    [of.networkId, membershipId, personId],
  );
  return { ...of, personId, membershipId };
}

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
  cases = await casesOf(world);
  const { coordinator, member, neighbour, stranger, quarry } = world.people;
  const leaver = await another(coordinator);
  const locked = await another(coordinator);
  const all: Readonly<Record<string, [Actor, Record<string, unknown>]>> = {
    coordinator: [coordinator, {}],
    member: [member, {}],
    neighbour: [neighbour, {}],
    stranger: [stranger, {}],
    'narrowed coordinator': [coordinator, { siteIds: [quarry] }],
    'reads only': [member, { scope: 'read' }],
    withdrawn: [coordinator, {}],
    'run out': [coordinator, { worksUntil: '2099-01-01' }],
    left: [leaver, {}],
    'locked out': [locked, {}],
  };
  for (const [who, [actor, more]] of Object.entries(all)) tokens.set(who, await tokenOf(actor, more));
  const newest = (personId: string, set: string) =>
    admin.query(
      `update api_token set ${set} where id = (select id from api_token where person_id = $1 order by id desc limit 1)`,
      [personId],
    );
  await admin.query(
    `update api_token set expires_at = now() - interval '1 minute' where expires_at is not null`,
  );
  await newest(locked.personId, `name = 'of a person locked out'`);
  await admin.query('update person set disabled_at = now() where id = $1', [locked.personId]);
  await admin.query('update membership set ended_at = now() where id = $1', [leaver.membershipId]);
  await admin.query(
    `update api_token set voided_at = now(), void_reason = 'tried' where person_id = $1 and every_site and may_write
       and expires_at is null and id <> (select min(id::text)::uuid from api_token where person_id = $1)`,
    [coordinator.personId],
  );
});
afterAll(() => admin.end());

async function historyLines(): Promise<number> {
  const { rows } = await admin.query('select count(*)::int as n from history');
  return Number(rows[0]?.n);
}

async function prepared(name: string): Promise<Tried> {
  const one = cases.get(name);
  if (!one) throw new Error(`No case of ${name}`);
  return one();
}

async function ask(name: string, who: string, { id, body, query, revision }: Tried) {
  const operation = operations.find((one) => one.name === name);
  if (!operation) throw new Error(`No operation ${name}`);
  const address = operation.path.replace('{id}', id ?? '');
  return checkAnswer(
    name,
    await send(operation.method, address + (query === undefined ? '' : `?${new URLSearchParams(query)}`), {
      token: tokens.get(who),
      body: operation.method === 'GET' ? undefined : body,
      headers: revision === undefined ? {} : { 'if-match': `"${revision}"` },
    }),
  );
}

it('has a case for every operation', () => {
  expect(operations.map(({ name }) => name).filter((name) => !cases.has(name))).toEqual([]);
});

describe.each(operations.map(({ name, method }) => [name, method] as const))('%s', (name, method) => {
  const aboutEverybody =
    method === 'GET' &&
    ['Species', 'Materials', 'Methods', 'SubstrateLots', 'SpawnLots'].some((kind) => name.endsWith(kind));
  // Lots belong to the network: whoever is a member of any site of it adds one.
  const ofAnyMember = ['createSubstrateLots', 'createSpawnLots'].includes(name);
  const refused = refusedAskers.filter(
    (who) => !(ofAnyMember && ['neighbour', 'narrowed coordinator'].includes(who)),
  );
  const ofCoordinators = ['readComparison', 'readLotAnswers'].includes(name);

  /** What somebody is answered who may not, or must not see what is Mill Lane's. */
  function expectRefusal(who: Asker, { status, body }: Reply): void {
    if (withoutToken.includes(who)) expect(status, who).toBe(401);
    else if (who === 'reads only' && method !== 'GET') expect(status, who).toBe(403);
    else if (who === 'reads only' && !ofCoordinators) expect(status, who).toBeLessThan(300);
    else if (aboutEverybody && who !== 'stranger') expect(status, who).toBe(200);
    else if (name.startsWith('list')) {
      const { millLane } = world.people;
      const told = JSON.stringify(body);
      expect(told, who).not.toContain(millLane);
      if (who === 'stranger')
        for (const id of Object.values(world.stock)) expect(told, who).not.toContain(id);
    } else if (method === 'POST' && status === 422)
      // A site or a lot of others is refused in its field like one that is not there.
      expect(
        (body.errors as { code: string }[]).map(({ code }) => code),
        who,
      ).toContain('not-found');
    else expect(status, who).toBe(404);
  }

  it('shows and does nothing for whoever may not', async () => {
    const tried = await prepared(name);
    const before = await historyLines();
    for (const who of refused) expectRefusal(who, await ask(name, who, tried));
    expect(await historyLines()).toBe(before);
    for (const who of refusedAskers.filter((one) => !refused.includes(one)))
      expect((await ask(name, who, tried)).status, who).toBe(201);
    // The same attempt does what it should for a member of the site, so that nothing else refused it.
    const { status } = await ask(name, 'member', tried);
    if (ofCoordinators) expect(status).toBe(404);
    else expect(status).toBeLessThan(300);
  });

  it('answers the coordinator', async () => {
    expect((await ask(name, 'coordinator', await prepared(name))).status).toBeLessThan(300);
  });
});
