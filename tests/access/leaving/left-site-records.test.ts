import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { type Command, runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import { closeBatch } from '@/lib/records/batch/close-batch.command';
import { closeBatchInput } from '@/lib/records/batch/close-batch.input';
import { correctBatch } from '@/lib/records/batch/correct-batch.command';
import { correctBatchInput } from '@/lib/records/batch/correct-batch.input';
import { reopenBatch } from '@/lib/records/batch/reopen-batch.command';
import { reopenBatchInput } from '@/lib/records/batch/reopen-batch.input';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { correctLook } from '@/lib/records/look/correct-look.command';
import { correctLookInput } from '@/lib/records/look/correct-look.input';
import { recordLook } from '@/lib/records/look/record-look.command';
import { recordLookInput } from '@/lib/records/look/record-look.input';
import { addParticipant } from '@/lib/records/participant/add-participant.command';
import { addParticipantInput } from '@/lib/records/participant/participant.input';
import { leaveSite } from '@/lib/records/site/leave-site.command';
import { leaveSiteInput } from '@/lib/records/site/leave-site.input';
import { endTreatment } from '@/lib/records/treatment/end-treatment.command';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import { endTreatmentInput, startTreatmentInput } from '@/lib/records/treatment/treatment.input';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { getNote } from '@/lib/records/words/get-note.query';
import { takeOutNote } from '@/lib/records/words/take-out-note.command';
import { takeOutNoteInput } from '@/lib/records/words/take-out-note.input';
import { testDatabase } from '../../support/database';
import { twentyBags } from '../../support/shed';
import { arrange, makeWorld, now, type World } from '../world';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let world: World;
let open: string;
let closed: string;
let look: string;
let noted: string;
let run: string;
let measured: string;
let participant: string;

const closing = {
  ...{ closedOn: '2026-07-01', closeReason: 'finished', spentDestination: 'composted' },
  noHarvest: 'none_picked',
};

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
  const { people, stock } = world;
  const { coordinator, millLane } = people;
  const bags = { ...twentyBags(people, stock), note: 'Juna Merrow mixed it' };
  open = (await arrange(coordinator, startBatchInput, startBatch, bags)).id;
  closed = (await arrange(coordinator, startBatchInput, startBatch, bags)).id;
  await arrange(coordinator, closeBatchInput, closeBatch, { ...closing, batchId: closed });
  look = (await arrange(coordinator, recordLookInput, recordLook, { batchId: open, lookedOn: '2026-04-12' }))
    .id;
  const withNote = { batchId: open, lookedOn: '2026-04-14', note: 'somebody was ill' };
  noted = (await arrange(coordinator, recordLookInput, recordLook, withNote)).id;
  const started = {
    siteId: millLane,
    methodId: stock.hotWater,
    startedAt: '2026-07-20T08:00:00Z',
    note: 'Juna Merrow mixed it',
  };
  run = (await arrange(coordinator, startTreatmentInput, startTreatment, started)).id;
  const warm = { ...started, loadCelsiusAtSpawning: 24 };
  measured = (await arrange(coordinator, startTreatmentInput, startTreatment, warm)).id;
  participant = (
    await arrange(coordinator, addParticipantInput, addParticipant, {
      ...{ siteId: millLane, name: 'Juna Merrow', countedOn: '2026-05-01' },
    })
  ).id;
  const leaving = { id: millLane, figures: 'counted', reason: 'the garden is being built on', word: 'leave' };
  await arrange(people.member, leaveSiteInput, leaveSite, leaving);
}, 180_000);
afterAll(() => admin.end());

const as = <S extends z.ZodType, T>(schema: S, command: Command<z.output<S>, T>, raw: unknown) =>
  runAs(world.people.coordinator, schema, command, raw, { now, reason: 'tried' });
const left = { kind: 'invalid', errors: [{ field: '', code: 'site-left' }] };
const leftAt = async (): Promise<Date> =>
  (await admin.query('select left_at from site where id = $1', [world.people.millLane])).rows[0]?.left_at;
const revisionOf = async (table: string, id: string) =>
  Number((await admin.query(`select revision from "${table}" where id = $1`, [id])).rows[0]?.revision);

describe('what a site recorded, once it has left', () => {
  it('is neither reopened nor corrected, by a coordinator either', async () => {
    const reopening = { id: closed, revision: await revisionOf('batch', closed), reason: 'tried' };
    expect(await as(reopenBatchInput, reopenBatch, reopening)).toEqual(left);
    const corrected = {
      ...twentyBags(world.people, world.stock),
      ...{ id: open, revision: await revisionOf('batch', open), reason: 'tried', note: 'mended' },
    };
    expect(await as(correctBatchInput, correctBatch, corrected)).toEqual(left);
    const other = { id: look, revision: 1, lookedOn: '2026-04-13', reason: 'tried' };
    expect(await as(correctLookInput, correctLook, other)).toEqual(left);
  });

  it('has no load in the bath for ever: a coordinator ends it, by the moment of leaving at the latest', async () => {
    const leaving = await leftAt();
    const at = (minutes: number) => new Date(leaving.getTime() + minutes * 60_000).toISOString();
    const ending = (minutes: number) => ({ id: run, revision: 1, endedAt: at(minutes) });
    const nextWeek = new Date(leaving.getTime() + 7 * 86_400_000);
    const end = (minutes: number) =>
      runAs(world.people.coordinator, endTreatmentInput, endTreatment, ending(minutes), { now: nextWeek });
    expect(await end(60)).toEqual({
      kind: 'invalid',
      errors: [
        {
          ...{ field: 'endedAt', code: 'after' },
          values: { date: todayInZone('America/New_York', leaving) },
        },
      ],
    });
    await expect(
      admin.query('update treatment_run set ended_at = $2 where id = $1', [run, at(60)]),
    ).rejects.toThrow('the site has left the network');
    await expect(
      admin.query('update treatment_run set ended_at = $2, lime_grams = 5 where id = $1', [run, at(-60)]),
    ).rejects.toThrow('the site has left the network');
    expect(await end(-60)).toMatchObject({ kind: 'ok' });
    await expect(
      admin.query('update treatment_run set ended_at = $2 where id = $1', [run, at(-30)]),
    ).rejects.toThrow('the site has left the network');
  });

  it('keeps the temperature of a load that was written down; the end of a run adds one only where there is none', async () => {
    const endedAt = '2026-07-20T08:30:00Z';
    const end = (more: object) =>
      as(endTreatmentInput, endTreatment, { id: measured, revision: 1, endedAt, ...more });
    expect(await end({ loadCelsiusAtSpawning: 61 })).toEqual(left);
    expect(await end({})).toMatchObject({ kind: 'ok' });
    const { rows } = await admin.query(
      'select load_celsius_at_spawning::float as celsius from treatment_run where id = $1',
      [measured],
    );
    expect(rows).toEqual([{ celsius: 24 }]);
  });

  it('may have the note of a batch and of a run taken out', async () => {
    for (const [kind, table, id] of [
      ['batch', 'batch', open],
      ['treatment-run', 'treatment_run', run],
    ] as const) {
      const noted = await readAs(world.people.coordinator, (context) => getNote(context, kind, id));
      expect(noted).toMatchObject({ note: 'Juna Merrow mixed it' });
      const taking = { kind, id, revision: noted?.revision, reason: 'asked to be forgotten' };
      expect(await as(takeOutNoteInput, takeOutNote, taking)).toMatchObject({ kind: 'ok' });
      const { rows } = await admin.query(`select note from ${table} where id = $1`, [id]);
      expect(rows).toEqual([{ note: null }]);
      expect(await readAs(world.people.coordinator, (context) => getNote(context, kind, id))).toBeUndefined();
    }
  });

  it('may be told as over by a coordinator, by the day of leaving at the latest, so that no log counts days for ever', async () => {
    const leftOn = todayInZone('America/New_York', await leftAt());
    const late = { ...closing, batchId: open, closedOn: addDays(leftOn, 1) };
    const nextWeek = new Date((await leftAt()).getTime() + 7 * 86_400_000);
    expect(
      await runAs(world.people.coordinator, closeBatchInput, closeBatch, late, { now: nextWeek }),
    ).toEqual({
      kind: 'invalid',
      errors: [{ field: 'closedOn', code: 'after', values: { date: leftOn } }],
    });
    await expect(
      admin.query('update batch set closed_on = $2, close_reason = $3 where id = $1', [
        open,
        addDays(leftOn, 1),
        'finished',
      ]),
    ).rejects.toThrow('the site has left the network');
    expect(await as(closeBatchInput, closeBatch, { ...closing, batchId: open })).toMatchObject({
      kind: 'ok',
    });
  });

  it('may have words taken out, and never others put in their place', async () => {
    const revision = await revisionOf('look', noted);
    const changed = { id: noted, revision, lookedOn: '2026-04-14', reason: 'tried', note: 'other words' };
    expect(await as(correctLookInput, correctLook, changed)).toEqual(left);
    expect(await as(correctLookInput, correctLook, { ...changed, note: '' })).toMatchObject({ kind: 'ok' });
  });

  it('is voided by a coordinator with the reason, and never counted again', async () => {
    const voiding = { kind: 'look', id: look, revision: 1, reason: 'written down twice' };
    expect(await as(voidRecordInput, voidRecord, voiding)).toMatchObject({ kind: 'ok' });
    const { rows } = await admin.query('select void_reason from look where id = $1', [look]);
    expect(rows).toEqual([{ void_reason: 'written down twice' }]);
    await expect(
      admin.query('update look set voided_at = null, void_reason = null where id = $1', [look]),
    ).rejects.toThrow('the site has left the network');
  });

  it('follows the network where its windows change, and those who take back a consent', async () => {
    await admin.query('update batch set yield_assessed_on = yield_assessed_on + 7 where id = $1', [open]);
    await admin.query('update participant set counted_on = null where id = $1', [participant]);
    await expect(
      admin.query(`update batch set unit_count = unit_count + 1 where id = $1`, [open]),
    ).rejects.toThrow('the site has left the network');
  });

  it('leaves the records of other sites as free as they were', async () => {
    const { people, stock } = world;
    const base = twentyBags(people, stock);
    const components = base.components.map((one) => ({ ...one, treatment: `method:${stock.hotWater}` }));
    const bags = { ...base, components, siteId: people.quarry };
    const { id } = await arrange(people.coordinator, startBatchInput, startBatch, bags);
    expect(await as(closeBatchInput, closeBatch, { ...closing, batchId: id })).toMatchObject({ kind: 'ok' });
  });
});
