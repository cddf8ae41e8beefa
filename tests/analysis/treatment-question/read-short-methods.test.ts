import { Client } from 'pg';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { readShortMethods } from '@/lib/analysis/treatment-question/read-short-methods';
import { newId } from '@/lib/base/new-id';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { shed } from '../../support/shed';

const { superuser } = await testDatabase();
const people = await growers(superuser);
const stock = await shed(people);
const now = new Date('2026-07-20T15:00:00Z');
const days = { from: '2026-03-01', to: '2026-07-20' };
const admin = new Client({ connectionString: superuser });

const ask = (actor: Actor, siteId: string, period = days) =>
  readAs(actor, (context) => readShortMethods(context, siteId, period, now));

/** A bath whose middle was at 70 degrees for so many minutes. */
async function bath(siteId: string, on: string, minutes: number) {
  const id = newId();
  const from = Date.parse(`${on}T14:00:00Z`);
  const end = new Date(from + minutes * 60_000);
  await admin.query(
    `insert into treatment_run (network_id, id, code, site_id, method_id, started_at, ended_at)
     values ($1, $2, $3, $4, $5, $6, $7)`,
    [people.member.networkId, id, id.slice(-12), siteId, stock.hotWater, new Date(from), end],
  );
  for (const at of [from, (from + end.getTime()) / 2, end.getTime()])
    await admin.query(
      `insert into treatment_reading (network_id, site_id, treatment_run_id, read_at, place, celsius)
       values ($1, $2, $3, $4, 'load_middle', 70)`,
      [people.member.networkId, siteId, id, new Date(at)],
    );
}

beforeAll(async () => {
  await admin.connect();
  for (const day of ['01', '02', '03', '04', '05']) {
    await bath(people.millLane, `2026-04-${day}`, 44);
    await bath(people.quarry, `2026-04-${day}`, 75);
  }
}, 120_000);
afterAll(() => admin.end());

it('a site’s own runs say what they did not hold, to its member as to the coordinator, and not to another site', async () => {
  const short = [{ methodId: stock.hotWater, judged: 5, outside: 5, unknown: 0, latestHeld: false }];
  expect(await ask(people.coordinator, people.millLane)).toMatchObject(short);
  expect(await ask(people.member, people.millLane)).toMatchObject(short);
  expect((await ask(people.member, people.millLane))[0]?.heldMinutes).toBeCloseTo(44, 6);
  expect(await ask(people.coordinator, people.quarry)).toEqual([]);
  expect(await ask(people.neighbour, people.millLane)).toEqual([]);
});

it('runs begun before or after the days asked about are not among them', async () => {
  expect(await ask(people.coordinator, people.millLane, { ...days, from: '2026-04-02' })).toEqual([]);
  expect(await ask(people.coordinator, people.millLane, { ...days, to: '2026-04-04' })).toEqual([]);
  expect(
    await ask(people.coordinator, people.millLane, { from: '2026-04-01', to: '2026-04-05' }),
  ).toHaveLength(1);
});
