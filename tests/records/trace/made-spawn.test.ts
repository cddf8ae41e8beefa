import { Client } from 'pg';
import { beforeAll, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { listNoticeSites } from '@/lib/records/lot-notice/list-notice-sites.query';
import { getTrace } from '@/lib/records/trace/get-trace.query';
import { getWhereabouts } from '@/lib/records/trace/get-whereabouts.query';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { find, startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';

const { superuser } = await testDatabase();
let people: Growers;
let stock: Shed;
let itsOwn: string;
let ofBoth: string;
let ofChild: string;

const days = ['2026-04-01', '2026-04-03', '2026-04-05'];

// SP-2 is made from SP-1: a batch of each, and one of both.
beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
  const admin = new Client({ connectionString: superuser });
  await admin.connect();
  await admin.query('update spawn_lot set parent_lot_id = $1 where id = $2', [
    stock.oysterSpawn,
    stock.secondOysterSpawn,
  ]);
  await admin.end();
  const spawn = (...lots: string[]) => lots.map((lotId) => ({ lotId, mass: 600 }));
  itsOwn = await startBags(people, stock, { inoculatedOn: days[0] });
  ofBoth = await startBags(people, stock, {
    ...{ inoculatedOn: days[1], spawn: spawn(stock.oysterSpawn, stock.secondOysterSpawn) },
  });
  ofChild = await startBags(people, stock, {
    ...{ inoculatedOn: days[2], spawn: spawn(stock.secondOysterSpawn) },
  });
  await find(people.member, ofChild, { action: 'discarded', units: 3 });
  const weighed = await runAs(
    people.member,
    recordWeighingInput,
    recordWeighing,
    {
      ...{ weighedOn: '2026-05-04', fresh: 3_000, sold: 3_000 },
      lines: [
        { batchId: itsOwn, flush: 1, mass: 1_800 },
        { batchId: ofChild, flush: 1, mass: 1_200 },
      ],
    },
    { now: testDay },
  );
  if (weighed.kind !== 'ok') throw new Error(JSON.stringify(weighed));
});

it('a lot’s own batches are counted without those of spawn made from it, which are told apart', async () => {
  const went = await readAs(people.coordinator, (context) =>
    getWhereabouts(context, 'spawn-lot', stock.oysterSpawn),
  );
  expect(went.own.all).toMatchObject({ batches: 2, open: 2, live: 40, contaminated: 0 });
  expect(went.made).toMatchObject({ lotsMade: 1, all: { batches: 1, open: 1, live: 17, contaminated: 3 } });
  expect(went.lastUsedOn).toBe(days[1]);
});

it('a batch of both counts as the lot’s own, and a lot from which none was made has no second part', async () => {
  const child = await readAs(people.coordinator, (context) =>
    getWhereabouts(context, 'spawn-lot', stock.secondOysterSpawn),
  );
  expect(child.own.all.batches).toBe(2);
  expect(child.made).toBeNull();
  expect(child.lastUsedOn).toBe(days[2]);
});

it('a trace holds the batches and crates of the lot itself apart from those of spawn made from it', async () => {
  const trace = await readAs(people.coordinator, (context) =>
    getTrace(context, 'spawn-lot', stock.oysterSpawn),
  );
  expect(trace?.own.batches.map(({ id }) => id)).toEqual([itsOwn, ofBoth]);
  expect(trace?.made?.batches.map(({ id }) => id)).toEqual([ofChild]);
  expect(trace?.own.harvests).toMatchObject([{ batchIds: [itsOwn], mixed: true }]);
  expect(trace?.made?.harvests).toMatchObject([{ batchIds: [ofChild], mixed: true }]);
  expect([...(trace?.own.went.signs ?? [])]).toEqual([]);
  expect([...(trace?.made?.went.signs ?? [])]).toEqual([['green', 3]]);
});

it('who writes a notice sees of each site the lot’s own batches, and beside them those of spawn made from it', async () => {
  const choices = await readAs(people.coordinator, (context) =>
    listNoticeSites(context, 'spawn-lot', stock.oysterSpawn),
  );
  expect(choices?.sites.find(({ id }) => id === people.millLane)).toMatchObject({
    ...{ batches: 2, open: 2, made: { batches: 1, open: 1 } },
  });
});
