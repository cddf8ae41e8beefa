import { Client } from 'pg';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { noteCostInput } from '@/lib/records/cost/cost.input';
import { noteCost } from '@/lib/records/cost/note-cost.command';
import { listNoticeSites } from '@/lib/records/lot-notice/list-notice-sites.query';
import { startSecondLifeInput } from '@/lib/records/second-life/second-life.input';
import { startSecondLife } from '@/lib/records/second-life/start-second-life.command';
import { leaveSite } from '@/lib/records/site/leave-site.command';
import { leaveSiteInput } from '@/lib/records/site/leave-site.input';
import { getTrace } from '@/lib/records/trace/get-trace.query';
import { allocateTreatment } from '@/lib/records/treatment/allocate-treatment.command';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import { allocateTreatmentInput, startTreatmentInput } from '@/lib/records/treatment/treatment.input';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { testDatabase } from '../../support/database';
import { twentyBags } from '../../support/shed';
import { arrange, makeWorld, type World } from '../world';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
const reason = 'the garden is being built on';
let world: World;

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
}, 180_000);
afterAll(() => admin.end());

async function site(name: string, code: string): Promise<{ id: string; member: Actor }> {
  const { member } = world.people;
  const { rows } = await admin.query<{ id: string }>(
    `insert into site (network_id, code, name, kind, time_zone) values ($1, $2, $3, 'farm', 'America/New_York') returning id`,
    [member.networkId, code, name],
  );
  const id = rows[0]?.id ?? '';
  await admin.query('insert into membership_site (network_id, membership_id, site_id) values ($1, $2, $3)', [
    member.networkId,
    member.membershipId,
    id,
  ]);
  return { id, member: { ...member, siteIds: [...member.siteIds, id] } };
}

const withdraw = (actor: Actor, id: string) =>
  runAs(actor, leaveSiteInput, leaveSite, { id, figures: 'withdrawn', reason, word: 'leave' }, { reason });

const secondLife = (sourceId: string, siteId: string) =>
  arrange(world.people.coordinator, startSecondLifeInput, startSecondLife, {
    ...{ siteId, speciesId: world.stock.oyster, containerKind: 'bed', unitCount: 1 },
    ...{ inoculatedOn: '2026-05-18', moistureSource: 'none', bedArea: { text: '2', unit: 'm2' } },
    sources: [{ batchId: sourceId, units: 12 }],
  });

it('are traced past: what went on from there to other sites is found, what was voided before is not', async () => {
  const { coordinator, quarry } = world.people;
  const { id, member } = await site('Heron Bank', 'HERON');
  const spawn = [{ lotId: world.stock.secondOysterSpawn, mass: 1_000 }];
  const bags = { ...twentyBags(world.people, world.stock), siteId: id, spawn };
  const first = await arrange(member, startBatchInput, startBatch, bags);
  const mistaken = await arrange(member, startBatchInput, startBatch, bags);
  await arrange(member, voidRecordInput, voidRecord, {
    ...{ kind: 'batch', id: mistaken.id, revision: 1, reason: 'Entered twice' },
  });
  const later = await secondLife(first.id, quarry);
  const traced = async () => {
    const trace = await readAs(coordinator, (context) =>
      getTrace(context, 'spawn-lot', world.stock.secondOysterSpawn),
    );
    return {
      batches: trace?.on.batches.map((batch) => batch.id).sort(),
      sites: trace?.own.went.sites.map(({ siteName }) => siteName),
      out: trace?.on.takenOut.map(({ to, voided, withdrawn }) => ({ id: to.id, voided, withdrawn })),
    };
  };
  expect((await traced()).batches).toEqual([first.id, later.id].sort());
  expect(await withdraw(member, id)).toMatchObject({ kind: 'ok' });
  const after = await traced();
  expect(after).toMatchObject({ batches: [later.id], sites: ['Quarry Farm'] });
  expect(after.out).toHaveLength(3);
  for (const one of [
    { id: first.id, voided: reason, withdrawn: true },
    { id: later.id, voided: reason, withdrawn: true },
    { id: mistaken.id, voided: 'Entered twice', withdrawn: false },
  ])
    expect(after.out).toContainEqual(one);
  const back = await readAs(coordinator, (context) => getTrace(context, 'batch', later.id));
  expect(back?.back.takenOut.map(({ from }) => from.id)).toContain(world.stock.secondOysterSpawn);
  const told = await readAs(coordinator, (context) =>
    listNoticeSites(context, 'spawn-lot', world.stock.secondOysterSpawn),
  );
  expect(told?.sites.find((one) => one.id === quarry)).toMatchObject({ batches: 1 });
});

it('leave to other sites the runs they were lent, with what these cost', async () => {
  const { id, member } = await site('Kettle Court', 'KETTLE');
  const { millLane } = world.people;
  const made = async () => {
    const run = await arrange(member, startTreatmentInput, startTreatment, {
      ...{ siteId: id, methodId: world.stock.hotWater, startedAt: '2026-03-30T08:00:00Z' },
    });
    await arrange(member, noteCostInput, noteCost, { of: 'treatment-run', about: run.id, labourMinutes: 30 });
    return run.id;
  };
  const [filled, offered, own] = [await made(), await made(), await made()];
  for (const treatmentRunId of [filled, offered])
    await arrange(world.people.coordinator, allocateTreatmentInput, allocateTreatment, {
      treatmentRunId,
      siteId: millLane,
    });
  const usual = twentyBags(world.people, world.stock);
  const components = usual.components.map((one) => ({ ...one, treatment: `run:${filled}` }));
  await arrange(world.people.coordinator, startBatchInput, startBatch, { ...usual, components });
  await admin.query('update treatment_allocation set voided_at = now() where treatment_run_id = $1', [
    filled,
  ]);
  expect(await withdraw(member, id)).toMatchObject({ kind: 'ok' });
  const { rows } = await admin.query<{ id: string; run: boolean; cost: boolean }>(
    `select r.id, r.voided_at is not null as run, c.voided_at is not null as cost
     from treatment_run r join cost_note c on c.treatment_run_id = r.id where r.site_id = $1`,
    [id],
  );
  const voided = (run: string) => rows.find((row) => row.id === run);
  expect(voided(filled)).toMatchObject({ run: false, cost: false });
  expect(voided(offered)).toMatchObject({ run: false, cost: false });
  expect(voided(own)).toMatchObject({ run: true, cost: true });
});
