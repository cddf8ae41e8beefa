import { Client } from 'pg';
import { describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { askCosts } from '@/lib/analysis/costs/ask-costs';
import { readCosts } from '@/lib/analysis/costs/read-costs';
import { readRunShares } from '@/lib/analysis/costs/read-run-shares';
import { closeBatch } from '@/lib/records/batch/close-batch.command';
import { closeBatchInput } from '@/lib/records/batch/close-batch.input';
import { changeMoney } from '@/lib/records/settings/change-money.command';
import { changeMoneyInput } from '@/lib/records/settings/money.input';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { costBatch, costRun, priceLot } from '../../records/cost/cost-notes';
import { idOf, sell } from '../../records/programme/programme-records';
import { startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';

const { superuser } = await testDatabase();
const later = new Date('2026-07-20T15:00:00Z');
const spring = { from: '2026-03-01', to: '2026-06-30' };

let tag = 0;
async function newShed(): Promise<{ people: Growers; stock: Shed }> {
  tag += 1;
  const people = await growers(superuser, String(tag));
  return { people, stock: await shed(people) };
}

/** A batch that gave 10 kg and was closed, unless said otherwise. */
async function finished({ people, stock }: { people: Growers; stock: Shed }, grams = 10_000, changes = {}) {
  const batchId = await startBags(people, stock, changes);
  if (grams > 0) {
    const raw = { weighedOn: '2026-05-10', fresh: grams, lines: [{ batchId, flush: 1 }] };
    const weighed = await runAs(people.member, recordWeighingInput, recordWeighing, raw, { now: testDay });
    if (weighed.kind !== 'ok') throw new Error(JSON.stringify(weighed));
  }
  const raw = {
    ...{ batchId, closedOn: '2026-07-01', closeReason: 'finished', spentDestination: 'composted' },
    ...(grams > 0 ? {} : { noHarvest: 'none_picked' }),
  };
  const closed = await runAs(people.member, closeBatchInput, closeBatch, raw, { now: later });
  if (closed.kind !== 'ok') throw new Error(JSON.stringify(closed));
  return batchId;
}

async function priceEverything({ people: { member }, stock }: { people: Growers; stock: Shed }) {
  await priceLot(member, 'substrate-lot', stock.straw, '12', 300_000);
  await priceLot(member, 'spawn-lot', stock.oysterSpawn, '25', 2_000);
}

const ask = ({ coordinator }: Growers) => readAs(coordinator, (context) => readCosts(context, spring, later));

describe('what a kilogram cost', () => {
  it('is all costs of complete batches over all they gave, runs shared by dry mass', async () => {
    const world = await newShed();
    const { people, stock } = world;
    await priceEverything(world);
    const first = await finished(world);
    const second = await finished(world, 0);
    for (const id of [first, second]) await costBatch(people.member, id);
    await costRun(people.member, stock.bathRun);
    const { methods, sites, fullBatches, missing } = await ask(people);
    expect({ fullBatches, missing }).toEqual({ fullBatches: 2, missing: [] });
    // Each: 10 kg of straw 0.40, 1.2 kg of spawn 15.00, supplies 3.50, fuel 0.50, half of the run's 2.00 and 0.10.
    const each = 40 + 1500 + 350 + 50 + 105;
    const cost = { kind: 'figure', minorPerKg: (2 * each) / 10, batches: 2 };
    expect(methods).toMatchObject([{ key: stock.hotWater, freshGrams: 10_000, cost }]);
    expect(sites).toMatchObject([
      { key: people.millLane, cost: { ...cost, interval: { kind: 'none', reason: 'too-few-runs' } } },
    ]);
    // Two times 90 minutes and the run's 60 over 10 kg; they cost nothing until an hour has a value.
    expect(sites[0]?.labourMinutesPerKg).toBe(24);
    const money = { revision: 1, reason: 'agreed', currency: 'USD', labourPerHour: '12' };
    expect((await runAs(people.coordinator, changeMoneyInput, changeMoney, money)).kind).toBe('ok');
    expect((await ask(people)).sites[0]?.cost).toMatchObject({ minorPerKg: (2 * each + 4800) / 10 });
  });

  it('leaves out a batch that lacks a part, and names the part', async () => {
    const world = await newShed();
    const { people, stock } = world;
    await priceEverything(world);
    const whole = await finished(world);
    const part = await finished(world);
    await costBatch(people.member, whole);
    await costBatch(people.member, part, { water: '' });
    expect(await ask(people)).toMatchObject({
      fullBatches: 0,
      missing: [
        { part: 'treatment-labour', batches: 2 },
        { part: 'treatment-supplies', batches: 2 },
        { part: 'treatment-fuel', batches: 2 },
        { part: 'treatment-water', batches: 2 },
        { part: 'water', batches: 1 },
      ],
      sites: [{ cost: { kind: 'cannot', reason: 'no-full-costs' } }],
    });
    await costRun(people.member, stock.bathRun);
    const answer = await ask(people);
    expect(answer).toMatchObject({ fullBatches: 1, batches: 2, missing: [{ part: 'water', batches: 1 }] });
    // The incomplete batch still bears its half of the run.
    expect(answer.sites[0]?.cost).toMatchObject({ minorPerKg: (40 + 1500 + 350 + 50 + 105) / 10 });
  });

  it('cannot be told from batches that gave nothing, are open or lie outside the period', async () => {
    const world = await newShed();
    const { people } = world;
    await priceEverything(world);
    await costRun(people.member, world.stock.bathRun);
    await startBags(people, world.stock);
    expect(await ask(people)).toMatchObject({ batches: 0, methods: [], sites: [] });
    await costBatch(people.member, await finished(world, 0));
    expect((await ask(people)).sites).toMatchObject([
      { fullBatches: 1, cost: { kind: 'cannot', reason: 'nothing-picked' }, labourMinutesPerKg: null },
    ]);
    const winter = { from: '2025-01-01', to: '2025-02-01' };
    const none = await readAs(people.coordinator, (context) => readCosts(context, winter, later));
    expect(none.batches).toBe(0);
  });

  it('has a margin where the site recorded sales in the same time', async () => {
    const world = await newShed();
    const { people, stock } = world;
    await priceEverything(world);
    await costBatch(people.member, await finished(world));
    await costRun(people.member, stock.bathRun);
    expect((await ask(people)).sites[0]?.margin).toEqual({ kind: 'cannot', reason: 'no-sales' });
    idOf(await sell(people.member, people.millLane, { mass: 2_000, amount: '30' }));
    idOf(await sell(people.member, people.millLane, { mass: 1_000, amount: '9' }));
    // 39.00 for 3 kg are 13.00 a kilogram; the run is all this batch's.
    const cost = (40 + 1500 + 350 + 50 + 210) / 10;
    const margin = (await ask(people)).sites[0]?.margin;
    expect(margin).toMatchObject({ kind: 'figure', batches: 1 });
    expect(margin?.kind === 'figure' ? margin.minorPerKg : 0).toBeCloseTo(1300 - cost, 9);
  });

  it('is not added up while somebody waits where more batches are closed than can be at once', async () => {
    const world = await newShed();
    const { coordinator } = world.people;
    for (const _ of [1, 2]) await finished(world);
    const asked = (most: number) => readAs(coordinator, (context) => askCosts(context, spring, later, most));
    expect(await asked(1)).toMatchObject({ kind: 'too-many', most: 1, scope: { period: spring } });
    expect(await asked(2)).toMatchObject({ kind: 'answer', answer: await ask(world.people) });
  }, 60_000);

  it('bears the same of a run whatever days are asked about, though a batch of other days had part of its load', async () => {
    const world = await newShed();
    const { people, stock } = world;
    await costRun(people.member, stock.bathRun);
    const component = { lotId: stock.straw, role: 'substrate', mass: 5_000, massStage: 'before_treatment' };
    const own = await finished(world, 0);
    const admin = new Client({ connectionString: superuser });
    await admin.connect();
    const { rows } = await admin.query<{ id: string }>(
      `insert into treatment_run (network_id, code, site_id, method_id, started_at)
       select network_id, 'BATH-2', site_id, method_id, started_at from treatment_run where id = $1 returning id`,
      [stock.bathRun],
    );
    await admin.end();
    const twoRuns = [stock.bathRun, rows[0]?.id].map((run) => ({ ...component, treatment: `run:${run}` }));
    await finished(world, 0, { inoculatedOn: '2026-04-20', components: twoRuns });
    const shareIn = (period: { from: string; to: string }) =>
      readAs(people.coordinator, (context) => readRunShares(context, period, 'USD')).then((shares) =>
        shares.get(own)?.map(({ runId, labourMinutes }) => ({ runId, labourMinutes })),
      );
    const alone = await shareIn({ from: '2026-04-01', to: '2026-04-01' });
    expect(alone).toHaveLength(1);
    expect(alone?.[0]?.labourMinutes).toBeGreaterThan(0);
    expect(alone).toEqual(await shareIn(spring));
  }, 60_000);
});
