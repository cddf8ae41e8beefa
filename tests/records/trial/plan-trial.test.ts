import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { correctTrial } from '@/lib/records/trial/correct-trial.command';
import { noteTrial } from '@/lib/records/trial/note-trial.command';
import { planTrial } from '@/lib/records/trial/plan-trial.command';
import { settleTrialSize } from '@/lib/records/trial/settle-trial-size.command';
import { startTrial } from '@/lib/records/trial/start-trial.command';
import {
  correctTrialInput,
  noteTrialInput,
  planTrialInput,
  settleTrialSizeInput,
  startTrialInput,
} from '@/lib/records/trial/trial.input';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { historyOf, type Shed, shed } from '../../support/shed';
import { bathOrLime, plannedTrial, startedTrial, trialDay, trialNow } from '../../support/trials';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let people: Growers;
let stock: Shed;
const now = trialDay;

beforeAll(async () => {
  await admin.connect();
  people = await growers(superuser);
  stock = await shed(people);
});
afterAll(() => admin.end());

const plan = (changes: object) =>
  runAs(people.coordinator, planTrialInput, planTrial, bathOrLime(people, stock, changes), { now });
const correct = (id: string, revision: number, changes: object = {}) =>
  runAs(
    people.coordinator,
    correctTrialInput,
    correctTrial,
    { ...bathOrLime(people, stock, changes), id, revision, reason: 'thought again' },
    { now, reason: 'thought again' },
  );
const start = (id: string, seed = '') =>
  runAs(people.coordinator, startTrialInput, startTrial, { id, seed }, { now });

describe('a plan', () => {
  it.each([
    [{ arms: [{ label: 'bath' }] }, 'arms.1.label', 'missing'],
    [{ arms: [{ label: 'bath' }, { label: 'Bath' }] }, 'arms.1.label', 'already-there'],
    [{ siteIds: [] }, 'siteIds', 'missing-choice'],
    [{ differencePoints: '0' }, 'differencePoints', 'trial-no-difference'],
    [{ differencePoints: '95' }, 'differencePoints', 'trial-difference-range'],
    [{ differencePoints: '-10' }, 'differencePoints', 'trial-difference-range'],
    [{ likeness: '' }, 'likeness', 'missing'],
    [{ outcome: 'yield', runSpreadPoints: '' }, 'runSpreadPoints', 'missing'],
  ])('that cannot be is refused: %j', async (changes, field, code) => {
    expect(await plan(changes)).toMatchObject({ kind: 'invalid', errors: [{ field, code }] });
  });

  it('of a site of another network is refused', async () => {
    expect(await plan({ siteIds: [people.saltbrookSite] })).toMatchObject({
      kind: 'invalid',
      errors: [{ field: 'siteIds', code: 'not-an-option' }],
    });
  });

  it('can be changed until it starts, with a history, and a stale change is noticed', async () => {
    const id = await plannedTrial(people, stock);
    expect(await correct(id, 1, { blocks: '3' })).toMatchObject({ kind: 'ok' });
    expect(await correct(id, 1, { blocks: '4' })).toMatchObject({ kind: 'conflict', current: 2 });
    expect(await trialNow(people, id)).toMatchObject({ state: 'draft', blocks: 3, revision: 2 });
    const history = await historyOf(people.coordinator, id);
    expect(history.map(({ reason, oldValues }) => [reason, oldValues])).toEqual([
      [null, null],
      ['thought again', { blocks: 2 }],
    ]);
  });

  it('takes its size by one number, which a stale page or a started trial does not change', async () => {
    const id = await plannedTrial(people, stock, { blocks: '' });
    const settle = (revision: number, blocks: string) =>
      runAs(people.coordinator, settleTrialSizeInput, settleTrialSize, { id, revision, blocks }, { now });
    expect(await settle(1, '0')).toMatchObject({ kind: 'invalid', errors: [{ field: 'blocks' }] });
    expect(await settle(1, '17')).toMatchObject({ kind: 'ok' });
    expect(await settle(1, '3')).toMatchObject({ kind: 'conflict', current: 2 });
    const { arms, ...settled } = await trialNow(people, id);
    expect(settled).toMatchObject({ state: 'draft', blocks: 17, revision: 2 });
    expect(arms).toHaveLength(2);
    expect(
      await runAs(
        people.member,
        settleTrialSizeInput,
        settleTrialSize,
        { id, revision: 2, blocks: '3' },
        { now },
      ),
    ).toMatchObject({ kind: 'not-found' });
    expect(await start(id)).toMatchObject({ kind: 'ok' });
    expect(await settle(3, '3')).toMatchObject({ errors: [{ code: 'trial-started' }] });
  });

  it('without a settled size does not start', async () => {
    const id = await plannedTrial(people, stock, { blocks: '' });
    expect(await start(id)).toMatchObject({ kind: 'invalid', errors: [{ code: 'trial-size-missing' }] });
  });

  it('sent twice is one plan', async () => {
    const raw = { ...bathOrLime(people, stock), id: '0199a000-0000-7000-8000-000000000001' };
    for (const _ of [1, 2])
      expect(await runAs(people.coordinator, planTrialInput, planTrial, raw, { now })).toMatchObject({
        kind: 'ok',
        value: { id: raw.id },
      });
  });
});

describe('the drawn list', () => {
  it('has every arm once in each round of each site', async () => {
    const { slots } = await startedTrial(people, stock);
    expect(slots).toHaveLength(8);
    for (const siteId of [people.millLane, people.quarry])
      for (const block of [1, 2]) {
        const arms = slots.filter((slot) => slot.siteId === siteId && slot.block === block);
        expect(arms.map(({ arm }) => arm).sort()).toEqual(['hot-water bath', 'lime soak']);
      }
    expect([...new Set(slots.map(({ block, plannedOn }) => `${block} ${plannedOn}`))].sort()).toEqual([
      '1 2026-04-01',
      '2 2026-04-15',
    ]);
  });

  it('is the same for the same seed, and another for most others', async () => {
    const list = async (seed: string) =>
      (await startedTrial(people, stock, { blocks: '10' }, seed)).slots.map(({ arm }) => arm).join();
    const first = await list('one');
    expect(await list('one')).toBe(first);
    expect(await list('another')).not.toBe(first);
  });

  it('is drawn once, with a seed that nobody chooses', async () => {
    const id = await plannedTrial(people, stock);
    expect(await start(id, 'a seed of my own')).toMatchObject({ kind: 'ok' });
    const { seed, slots } = await trialNow(people, id);
    expect(seed).toMatch(/^[0-9a-f]{16}$/);
    expect(await start(id)).toMatchObject({ kind: 'ok' });
    expect(await trialNow(people, id)).toMatchObject({ seed, slots });
  });
});

describe('a started trial', () => {
  it('refuses a change of its plan, and takes a dated note', async () => {
    const { id, revision } = await startedTrial(people, stock);
    expect(await correct(id, revision)).toMatchObject({ errors: [{ code: 'trial-started' }] });
    const note = { trialId: id, note: 'The second round begins a week later: frost.' };
    expect(await runAs(people.coordinator, noteTrialInput, noteTrial, note, { now })).toMatchObject({
      kind: 'ok',
    });
    expect((await trialNow(people, id)).notes).toMatchObject([
      { note: note.note, notedAt: now.toISOString() },
    ]);
  });

  it('cannot be changed past the commands either: the database refuses', async () => {
    const { id } = await startedTrial(people, stock);
    const { networkId } = people.coordinator;
    const attempts = [
      'update trial set difference_points = 5',
      "update trial set outcome = 'yield', likeness = null, run_spread_points = 10",
      "update trial set seed = 'another'",
    ].map((sql) => `${sql} where network_id = $1 and id = $2`);
    const parts = [
      "update trial_arm set label = 'another'",
      'update trial_slot set block = block + 1',
      "update trial_site set void_reason = 'away', voided_at = now()",
    ].map((sql) => `${sql} where network_id = $1 and trial_id = $2`);
    for (const sql of [...attempts, ...parts])
      await expect(admin.query(sql, [networkId, id]), sql).rejects.toMatchObject({ code: 'PB005' });
  });

  it('takes no further arm or run', async () => {
    const { id } = await startedTrial(people, stock);
    const { networkId } = people.coordinator;
    await expect(
      admin.query("insert into trial_arm (network_id, trial_id, place, label) values ($1, $2, 3, 'third')", [
        networkId,
        id,
      ]),
    ).rejects.toMatchObject({ code: 'PB005' });
  });

  it('lets the application change no note', async () => {
    const { rows } = await admin.query(
      `select privilege_type::text from information_schema.role_table_grants
       where grantee = 'pinset_app' and table_name = 'trial_note' order by 1`,
    );
    expect(rows.map((row) => row.privilege_type)).toEqual(['INSERT', 'SELECT']);
  });
});

it('shows a draft to the coordinator only, and a started trial to members with their own runs', async () => {
  const draft = await plannedTrial(people, stock);
  const { id } = await startedTrial(people, stock);
  const seen = await readAs(people.member, ({ db }) => db.trial.findMany({ select: { id: true } }));
  expect(seen.map((trial) => trial.id)).toContain(id);
  expect(seen.map((trial) => trial.id)).not.toContain(draft);
  const slots = await readAs(people.member, ({ db }) => db.trialSlot.findMany({ where: { trialId: id } }));
  expect(slots).toHaveLength(4);
  expect(new Set(slots.map(({ siteId }) => siteId))).toEqual(new Set([people.millLane]));
});
