import path from 'node:path';
import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { readSitesLeft } from '@/lib/analysis/production/read-sites-left';
import { openPackage } from '@/lib/export/package/open-package';
import { writePackage } from '@/lib/export/package/write-package';
import { listStartChoices } from '@/lib/records/batch/list-start-choices.query';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { getShed } from '@/lib/records/shed/get-shed.query';
import { getSite } from '@/lib/records/site/get-site.query';
import { leaveSite } from '@/lib/records/site/leave-site.command';
import { leaveSiteInput } from '@/lib/records/site/leave-site.input';
import { listLeftSites } from '@/lib/records/site/list-left-sites.query';
import { listSites } from '@/lib/records/site/list-sites.query';
import { countOpen } from '@/lib/records/today/count-open.query';
import { listDue } from '@/lib/records/today/list-due.query';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import { startTreatmentInput } from '@/lib/records/treatment/treatment.input';
import { listWeighableBatches } from '@/lib/records/weighing/list-weighable-batches.query';
import { buildReport } from '@/lib/report/build-report.command';
import { buildReportInput } from '@/lib/report/build-report.input';
import { reportIndicators } from '@/lib/report/content/report-indicators.input';
import { getReport } from '@/lib/report/get-report.query';
import { testDatabase } from '../../support/database';
import { twentyBags } from '../../support/shed';
import { temporaryFolder } from '../../support/temporary-folder';
import { arrange, makeWorld, now, type World } from '../world';

const { superuser } = await testDatabase();
const folder = temporaryFolder('pinset-test');
const admin = new Client({ connectionString: superuser });
let world: World;

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
}, 180_000);
afterAll(() => admin.end());

const leave = (actor: Actor, id: string, figures: 'counted' | 'withdrawn' = 'counted') =>
  runAs(
    actor,
    leaveSiteInput,
    leaveSite,
    { id, figures, reason: 'the garden is being built on', word: 'leave' },
    { reason: 'the garden is being built on' },
  );

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

const bags = (siteId: string) => ({ ...twentyBags(world.people, world.stock), siteId });

const wrong = async () =>
  (
    await admin.query('select * from app.wrong_outcomes($1) union all select * from app.wrong_totals($1)', [
      world.people.member.networkId,
    ])
  ).rows;

const sums = async () =>
  (await admin.query("select sum(batches)::int as batches from outcome_summary where span = 'year'")).rows[0];

describe('a site that leaves', () => {
  it('is let go by a member of it or the coordinator, and by nobody else, once', async () => {
    const { id, member } = await site('Copse End', 'COPSE');
    for (const actor of [world.people.neighbour, world.people.funder, world.people.stranger])
      expect(await leave(actor, id)).toEqual({ kind: 'not-found' });
    expect(await leave(member, id)).toEqual({ kind: 'ok', value: { id } });
    expect(await leave(world.people.coordinator, id)).toEqual({ kind: 'not-found' });
  });

  it('takes no new records, stands in no list and no choice, and is out of its members’ sight', async () => {
    const { id, member } = await site('Weir House', 'WEIR');
    const { coordinator } = world.people;
    const batch = await arrange(member, startBatchInput, startBatch, bags(id));
    await leave(member, id);
    expect(await runAs(coordinator, startBatchInput, startBatch, bags(id), { now })).not.toMatchObject({
      kind: 'ok',
    });
    expect(
      await runAs(
        coordinator,
        recordLookInput,
        recordLook,
        { batchId: batch.id, lookedOn: '2026-04-12' },
        { now },
      ),
    ).toEqual({ kind: 'invalid', errors: [{ field: '', code: 'site-left' }] });
    const choices = await readAs(coordinator, (context) => listStartChoices(context));
    expect(choices.sites.map((one) => one.id)).not.toContain(id);
    expect((await readAs(coordinator, listSites)).map((one) => one.id)).not.toContain(id);
    expect(await readAs(member, (context) => getSite(context, id))).toBeUndefined();
    expect(await readAs(coordinator, listLeftSites)).toContainEqual({
      id,
      name: 'Weir House',
      withdrawn: false,
    });
  });

  it('stands with its open batches and runs in nobody’s list of what to do', async () => {
    const { id, member } = await site('Kiln Corner', 'KILN');
    const { coordinator } = world.people;
    const batch = await arrange(member, startBatchInput, startBatch, bags(id));
    const run = await arrange(member, startTreatmentInput, startTreatment, {
      ...{ siteId: id, methodId: world.stock.hotWater, startedAt: '2026-07-20T08:00:00Z' },
    });
    const lists = () =>
      readAs(coordinator, async (context) => {
        const shed = await getShed(context, now);
        return {
          sites: (await countOpen(context, now, { most: 0 }))?.sites.map((one) => one.siteId).includes(id),
          batch: shed.batches.some((one) => one.id === batch.id),
          run: shed.runs.some((one) => one.id === run.id),
          due: (await listDue(context, now)).some((line) => line.siteId === id && line.of === 'run'),
          weighable: (await listWeighableBatches(context, { now })).some((one) => one.id === batch.id),
        };
      });
    expect(await lists()).toEqual({ sites: true, batch: true, run: true, due: true, weighable: true });
    await leave(member, id);
    expect(await lists()).toEqual({ sites: false, batch: false, run: false, due: false, weighable: false });
  });

  it('stays in the sums or is taken out of them, as it wishes, and what is kept of batches agrees', async () => {
    const kept = await site('Stay Field', 'STAY');
    const gone = await site('Gone Field', 'GONE');
    for (const { id, member } of [kept, gone]) await arrange(member, startBatchInput, startBatch, bags(id));
    const before = await sums();
    await leave(kept.member, kept.id);
    expect(await sums()).toEqual(before);
    await leave(gone.member, gone.id, 'withdrawn');
    const { rows } = await admin.query(
      'select voided_at is not null as voided, void_reason from batch where site_id = $1',
      [gone.id],
    );
    expect(rows).toEqual([{ voided: true, void_reason: 'the garden is being built on' }]);
    const { rows: counted } = await admin.query(
      "select coalesce(sum(batches), 0)::int as batches from outcome_summary where site_id = $1 and class <> 'voided'",
      [gone.id],
    );
    expect(counted).toEqual([{ batches: 0 }]);
    expect(await wrong()).toEqual([]);
  });

  it('is told beside the sums: to whoever reads them, and in a report', async () => {
    const left = await readAs(world.people.neighbour, readSitesLeft);
    expect(left).toMatchObject({ withdrawn: 1 });
    expect(left.counted).toBeGreaterThanOrEqual(2);
    const { coordinator } = world.people;
    const { id } = await arrange(coordinator, buildReportInput, buildReport, {
      ...{ title: 'A year', from: '2026-01-01', to: '2026-07-20', indicators: [...reportIndicators] },
    });
    expect((await readAs(coordinator, (context) => getReport(context, id)))?.content.sites?.left).toEqual(
      left,
    );
  });

  it('takes along its records and what they refer to, and no other site’s', async () => {
    const { millLane, coordinator } = world.people;
    const { id: other, member } = await site('Other Place', 'OTHER');
    await arrange(member, startBatchInput, startBatch, bags(other));
    const file = path.join(folder, 'site.zip');
    const options = { licence: 'none', softwareVersion: '0', now, siteId: millLane } as const;
    await readAs(coordinator, (context) => writePackage(context, file, options));
    const opened = await openPackage(file);
    const rows = async (table: string) => {
      const found: Record<string, string | null>[] = [];
      for await (const part of opened.rows(`data/${table}.csv`)) found.push(...part);
      return found;
    };
    expect((await rows('site')).map((row) => row.id)).toEqual([millLane]);
    const batches = await rows('batch');
    expect(batches.map((row) => row.id)).toContain(world.batch);
    expect(new Set(batches.map((row) => row.site_id))).toEqual(new Set([millLane]));
    expect((await rows('species')).length).toBeGreaterThan(0);
    opened.close();
  });
});

it('refuses what arrives while a site leaves, and loses nothing that was committed before', async () => {
  const { id, member } = await site('Race Row', 'RACE');
  const writes = Array.from({ length: 6 }, () =>
    runAs(member, startBatchInput, startBatch, bags(id), { now }),
  );
  const [left, ...written] = await Promise.all([leave(member, id, 'withdrawn'), ...writes]);
  expect(left.kind).toBe('ok');
  for (const result of written)
    if (result.kind !== 'ok') expect(['invalid', 'not-found']).toContain(result.kind);
  const stored = await admin.query<{ id: string; voided: boolean }>(
    'select id, voided_at is not null as voided from batch where site_id = $1',
    [id],
  );
  const committed = written.flatMap((result) => (result.kind === 'ok' ? [result.value.id] : []));
  expect(stored.rows.map((row) => row.id).sort()).toEqual(committed.sort());
  expect(stored.rows.filter((row) => !row.voided)).toEqual([]);
});

it('holds the lock: a write that began before waits for nobody, and one that comes after the leaving began is refused', async () => {
  const { id, member } = await site('Slow Lane', 'SLOW');
  const batch = await arrange(member, startBatchInput, startBatch, bags(id));
  await admin.query('begin');
  await admin.query("select pg_advisory_xact_lock(hashtextextended('site ' || $1::uuid, 0))", [id]);
  await admin.query('update site set left_at = now() where id = $1', [id]);
  const late = runAs(
    world.people.coordinator,
    recordLookInput,
    recordLook,
    { batchId: batch.id, lookedOn: '2026-04-12' },
    { now },
  );
  await new Promise((resolve) => setTimeout(resolve, 300));
  await admin.query('commit');
  expect(await late).toEqual({ kind: 'invalid', errors: [{ field: '', code: 'site-left' }] });
});

it('guards every table whose rows belong to a site', async () => {
  const { rows } = await admin.query<{ name: string }>(
    `select c.relname as name from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attname = 'site_id' and not a.attisdropped
     where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and c.relname not like 'outcome\\_%'
       and c.relname not in ('history', 'fitted_result', 'batch_outcome', 'sharing_agreement', 'membership_site', 'participant_contact', 'photo_content', 'intake_file')
       and (select count(*) from pg_trigger t where t.tgrelid = c.oid and t.tgname in ('refuse_left_site', 'keep_left_site')) < 2`,
  );
  expect(rows).toEqual([]);
});
