import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { listOpenBatches } from '@/lib/records/shed/list-open-batches.query';
import { listWeighableBatches } from '@/lib/records/weighing/list-weighable-batches.query';
import { startBags } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed, untreatedStraw } from '../../support/shed';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
const now = new Date('2026-07-20T15:00:00Z');
let people: Growers;
let stock: Shed;
let atMill: string;
let atQuarry: string;

beforeAll(async () => {
  await admin.connect();
  people = await growers(superuser);
  stock = await shed(people);
  atMill = await startBags(people, stock);
  const elsewhere = { siteId: people.quarry, components: [untreatedStraw(stock)] };
  atQuarry = await startBags({ ...people, member: people.neighbour }, stock, elsewhere);
}, 120_000);
afterAll(() => admin.end());

const opened = async (actor: Actor) =>
  (await readAs(actor, (context) => listOpenBatches(context))).map(({ id }) => id).toSorted();
const weighable = async (actor: Actor) =>
  (await readAs(actor, (context) => listWeighableBatches(context, { now }))).map(({ id }) => id).toSorted();

describe('open batches', () => {
  it('are those of the sites that somebody sees to', async () => {
    const both = [atMill, atQuarry].toSorted();
    expect([await opened(people.coordinator), await weighable(people.coordinator)]).toEqual([both, both]);
    expect([await opened(people.member), await weighable(people.member)]).toEqual([[atMill], [atMill]]);
    expect(await opened(people.neighbour)).toEqual([atQuarry]);
    const ofNoSite = { ...people.member, siteIds: [] };
    expect([await opened(ofNoSite), await weighable(ofNoSite)]).toEqual([[], []]);
    expect(await opened(people.stranger)).toEqual([]);
  });

  it('of a site that has left are nobody’s to see to any more', async () => {
    await admin.query('set session_replication_role = replica');
    await admin.query('update site set left_at = $2 where id = $1', [people.quarry, now]);
    expect([await opened(people.coordinator), await weighable(people.coordinator)]).toEqual([
      [atMill],
      [atMill],
    ]);
    expect([await opened(people.neighbour), await weighable(people.neighbour)]).toEqual([[], []]);
  });
});
