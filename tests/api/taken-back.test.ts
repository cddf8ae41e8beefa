import { Client } from 'pg';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { makeWorld, type World } from '../access/world';
import { testDatabase } from '../support/database';
import { send, tokenOf } from './api-world';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let world: World;

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
});
afterAll(() => admin.end());

const change = (what: string) =>
  admin.query(`update membership set ${what} where id = $1`, [world.people.member.membershipId]);

it.each([
  ['whose membership ended', 'ended_at = now()', 'ended_at = null'],
  ['who became a funder', `role = 'funder'`, `role = 'member'`],
])('a token of a person %s stays withdrawn when they are taken back', async (_who, away, back) => {
  const token = await tokenOf(world.people.member);
  const ask = async () => (await send('GET', '/sites', { token })).status;
  expect(await ask()).toBe(200);
  await change(away);
  expect(await ask()).toBe(401);
  await change(back);
  expect(await ask()).toBe(401);
  const { rows } = await admin.query(
    'select void_reason from api_token where voided_at is not null and person_id = $1',
    [world.people.member.personId],
  );
  expect(rows.at(-1)).toEqual({ void_reason: 'The person’s membership ended.' });
});
