import { Client } from 'pg';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { leaveSite } from '@/lib/records/site/leave-site.command';
import { leaveSiteInput } from '@/lib/records/site/leave-site.input';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import { startTreatmentInput } from '@/lib/records/treatment/treatment.input';
import { getNote } from '@/lib/records/words/get-note.query';
import { takeOutNote } from '@/lib/records/words/take-out-note.command';
import { takeOutNoteInput } from '@/lib/records/words/take-out-note.input';
import { testDatabase } from '../../support/database';
import { twentyBags } from '../../support/shed';
import { arrange, makeWorld, now, type World } from '../world';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
const note = 'Juna Merrow mixed it';
let world: World;
let batch: string;
let run: string;

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
  const { people, stock } = world;
  const { coordinator, millLane } = people;
  batch = (await arrange(coordinator, startBatchInput, startBatch, { ...twentyBags(people, stock), note }))
    .id;
  const bath = { siteId: millLane, methodId: stock.hotWater, startedAt: '2026-07-20T08:00:00Z', note };
  run = (await arrange(coordinator, startTreatmentInput, startTreatment, bath)).id;
  const leaving = { id: millLane, figures: 'withdrawn', reason: 'it is being built on', word: 'leave' };
  await arrange(people.member, leaveSiteInput, leaveSite, leaving);
}, 180_000);
afterAll(() => admin.end());

it('takes out the notes of what a site withdrew as it left, and leaves it withdrawn', async () => {
  const { coordinator } = world.people;
  for (const [kind, table, id] of [
    ['batch', 'batch', batch],
    ['treatment-run', 'treatment_run', run],
  ] as const) {
    const noted = await readAs(coordinator, (context) => getNote(context, kind, id));
    expect(noted).toMatchObject({ note, voided: true });
    const taking = { kind, id, revision: noted?.revision, reason: 'asked to be forgotten' };
    const take = (more: object = {}) =>
      runAs(coordinator, takeOutNoteInput, takeOutNote, { ...taking, ...more }, { now, reason: 'asked' });
    expect(await take({ revision: 99 })).toMatchObject({ kind: 'conflict' });
    expect(await take()).toEqual({ kind: 'ok', value: { id } });
    const { rows } = await admin.query(
      `select note, voided_at is not null as voided, void_reason from ${table} where id = $1`,
      [id],
    );
    expect(rows).toEqual([{ note: null, voided: true, void_reason: 'it is being built on' }]);
  }
});
