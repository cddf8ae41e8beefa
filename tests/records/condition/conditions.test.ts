import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { addConditions } from '@/lib/records/condition/add-conditions.command';
import { addPlace } from '@/lib/records/condition/add-place.command';
import {
  addConditionsInput,
  addPlaceInput,
  importConditionsInput,
  placeBatchInput,
} from '@/lib/records/condition/condition.input';
import { getBatchConditions } from '@/lib/records/condition/get-batch-conditions.query';
import { getPlace } from '@/lib/records/condition/get-place.query';
import { importConditions } from '@/lib/records/condition/import-conditions.command';
import { placeBatch } from '@/lib/records/condition/place-batch.command';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { historyOf, shed } from '../../support/shed';

const { superuser } = await testDatabase();
const people = await growers(superuser);
const stock = await shed(people);
const { member, coordinator, neighbour, millLane } = people;
const admin = new Client({ connectionString: superuser });
beforeAll(() => admin.connect());
afterAll(() => admin.end());

let named = 0;
async function place(): Promise<string> {
  named += 1;
  const raw = { siteId: millLane, name: `Tent ${named}` };
  const result = await runAs(member, addPlaceInput, addPlace, raw, { now: testDay });
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return result.value.id;
}

const layout = {
  delimiter: 'semicolon',
  decimal: 'comma',
  dateOrder: 'dmy',
  temperatureUnit: 'celsius',
  linesBefore: 1,
  columns: ['moment', 'temperature', 'humidity'],
};
const hours = (count: number, from = '2026-05-01T12:00:00Z', value = 20) =>
  Array.from({ length: count }, (_, hour) => ({
    at: new Date(Date.parse(from) + hour * 3_600_000),
    measure: 'temperature' as const,
    value: value + (hour % 3),
  }));
const take = (placeId: string, readings: readonly object[], changes: object = {}) =>
  runAs(
    member,
    importConditionsInput,
    importConditions,
    { placeId, layout, readings, ...changes },
    { now: testDay },
  );
const read = (placeId: string, raw: object) =>
  runAs(member, addConditionsInput, addConditions, { placeId, ...raw }, { now: testDay });
const see = (placeId: string) => readAs(member, (context) => getPlace(context, placeId, testDay));
async function count(placeId: string): Promise<number> {
  const { rows } = await admin.query(
    'select count(*)::int as n from condition_reading where place_id = $1 and voided_at is null',
    [placeId],
  );
  return Number(rows[0]?.n);
}

describe('a place', () => {
  it('has a name of its own at its site, whatever the capitals', async () => {
    await runAs(member, addPlaceInput, addPlace, { siteId: millLane, name: 'Cellar' });
    expect(await runAs(member, addPlaceInput, addPlace, { siteId: millLane, name: 'CELLAR' })).toMatchObject({
      kind: 'invalid',
      errors: [{ field: 'name', code: 'already-there' }],
    });
  });

  it("is not seen by another site's member", async () => {
    const id = await place();
    expect(await readAs(neighbour, (context) => getPlace(context, id, testDay))).toBeUndefined();
  });

  it('cannot be voided while a batch has stood there', async () => {
    const placeId = await place();
    const batchId = await startBags(people, stock);
    await runAs(
      member,
      placeBatchInput,
      placeBatch,
      { batchId, placeId, placedOn: '2026-04-02' },
      { now: testDay },
    );
    const raw = { kind: 'condition-place', id: placeId, revision: 1, reason: 'gone' };
    expect(await runAs(member, voidRecordInput, voidRecord, raw)).toMatchObject({
      kind: 'invalid',
      errors: [{ code: 'still-in-use' }],
    });
  });
});

describe('a reading by hand', () => {
  it('keeps what was read, with its history', async () => {
    const placeId = await place();
    const id = newId();
    const raw = {
      id,
      readAt: '2026-05-19T12:00:00Z',
      celsius: '18.5',
      humidityPercent: '91',
      carbonDioxidePpm: '900',
    };
    expect((await read(placeId, raw)).kind).toBe('ok');
    expect((await see(placeId))?.typed).toHaveLength(3);
    expect(await historyOf(coordinator, id)).toHaveLength(1);
  });

  it('that is sent twice is kept once, though it says now', async () => {
    const placeId = await place();
    const raw = { id: newId(), celsius: '18.5' };
    await read(placeId, raw);
    expect((await read(placeId, raw)).kind).toBe('ok');
    expect(await count(placeId)).toBe(1);
  });

  it('of nothing, of a day to come, or of the impossible is refused', async () => {
    const placeId = await place();
    expect(await read(placeId, {})).toMatchObject({ kind: 'invalid', errors: [{ code: 'reading-empty' }] });
    expect(await read(placeId, { readAt: '2026-06-01T12:00:00Z', celsius: 20 })).toMatchObject({
      errors: [{ field: 'readAt', code: 'future-date' }],
    });
    expect(await read(placeId, { celsius: 95 })).toMatchObject({ errors: [{ code: 'too-large' }] });
  });

  it('of another value at the same instant is refused', async () => {
    const placeId = await place();
    const readAt = '2026-05-19T12:00:00Z';
    await read(placeId, { readAt, celsius: 18 });
    expect(await read(placeId, { readAt, celsius: 19 })).toMatchObject({
      errors: [{ field: 'readAt', code: 'already-there' }],
    });
  });
});

describe('a table of readings', () => {
  it('is taken in once; again, or overlapping, it adds only what is new', async () => {
    const placeId = await place();
    expect(await take(placeId, hours(48))).toMatchObject({ value: { read: 48, added: 48 } });
    expect(await take(placeId, hours(48))).toMatchObject({ value: { read: 48, added: 0 } });
    expect(await take(placeId, hours(60))).toMatchObject({ value: { read: 60, added: 12 } });
    expect(await count(placeId)).toBe(60);
  });

  it('is taken in as a whole or not at all', async () => {
    const placeId = await place();
    const wrong = [...hours(3), { at: new Date('2026-05-02T12:00:00Z'), measure: 'humidity', value: 140 }];
    expect(await take(placeId, wrong)).toMatchObject({ errors: [{ code: 'reading-out-of-range' }] });
    expect(await count(placeId)).toBe(0);
  });

  it('leaves its layout for the next one, and one line of history for all its readings', async () => {
    const placeId = await place();
    const id = newId();
    await take(placeId, hours(5), { id });
    expect((await see(placeId))?.layout).toEqual(layout);
    expect((await historyOf(coordinator, id)).map(({ action }) => action)).toEqual(['created', 'changed']);
    const { rows } = await admin.query(
      `select count(*)::int as n from history h join condition_reading r on r.id = h.record_id where r.import_id = $1`,
      [id],
    );
    expect(rows[0]?.n).toBe(0);
  });

  it('that is voided takes its readings with it, and can be taken in anew', async () => {
    const placeId = await place();
    const id = newId();
    await take(placeId, hours(5), { id });
    const raw = { kind: 'condition-import', id, revision: 2, reason: 'wrong tent' };
    expect((await runAs(member, voidRecordInput, voidRecord, raw, { now: testDay })).kind).toBe('ok');
    expect(await count(placeId)).toBe(0);
    expect(await take(placeId, hours(5))).toMatchObject({ value: { added: 5 } });
  });

  it('has no single reading that can be voided, and none whose value can be changed', async () => {
    const placeId = await place();
    await take(placeId, hours(1));
    const { rows } = await admin.query('select id from condition_reading where place_id = $1', [placeId]);
    const raw = { kind: 'condition-reading', id: rows[0]?.id, revision: 1, reason: 'x' };
    expect((await runAs(member, voidRecordInput, voidRecord, raw)).kind).toBe('not-found');
    const change = readAs(member, ({ db }) => db.conditionReading.updateMany({ data: { value: 1 } }));
    await expect(change).rejects.toThrow(/permission denied|42501|denied/i);
  });
});

describe('the conditions of a batch', () => {
  it('are those of each place while it stood there', async () => {
    const batchId = await startBags(people, stock);
    const cellar = await place();
    const tent = await place();
    const put = (placeId: string, placedOn: string) =>
      runAs(member, placeBatchInput, placeBatch, { batchId, placeId, placedOn }, { now: testDay });
    expect((await put(cellar, '2026-05-01')).kind).toBe('ok');
    expect((await put(tent, '2026-05-03')).kind).toBe('ok');
    await take(cellar, hours(24 * 5, '2026-05-01T04:00:00Z', 20));
    await take(tent, hours(24 * 5, '2026-05-01T04:00:00Z', 10));
    const seen = await readAs(member, (context) => getBatchConditions(context, batchId, testDay));
    expect(seen?.stays).toMatchObject([
      { placeId: cellar, from: '2026-05-01', to: '2026-05-02' },
      { placeId: tent, from: '2026-05-03', to: '2026-05-20' },
    ]);
    expect(seen?.days).toEqual(
      ['2026-05-01', '2026-05-02', '2026-05-03', '2026-05-04', '2026-05-05'].map((on, index) => ({
        ...{ measure: 'temperature', on, days: 1, readings: 24 },
        low: index < 2 ? 20 : 10,
        mean: index < 2 ? 21 : 11,
        high: index < 2 ? 22 : 12,
      })),
    );
  });

  it('know one place a day: the later entry takes the first one’s stead', async () => {
    const batchId = await startBags(people, stock);
    const first = await place();
    const second = await place();
    for (const placeId of [first, second])
      await runAs(
        member,
        placeBatchInput,
        placeBatch,
        { batchId, placeId, placedOn: '2026-05-01' },
        { now: testDay },
      );
    const seen = await readAs(member, (context) => getBatchConditions(context, batchId, testDay));
    expect(seen?.stays.map(({ placeId }) => placeId)).toEqual([second]);
  });

  it('cannot name a place of another site, nor a day before the batch', async () => {
    const batchId = await startBags(people, stock);
    const raw = { siteId: people.quarry, name: 'Shed' };
    const other = await runAs(coordinator, addPlaceInput, addPlace, raw);
    if (other.kind !== 'ok') throw new Error(JSON.stringify(other));
    const put = (placeId: string, placedOn: string) =>
      runAs(coordinator, placeBatchInput, placeBatch, { batchId, placeId, placedOn }, { now: testDay });
    expect(await put(other.value.id, '2026-05-01')).toMatchObject({
      errors: [{ field: 'placeId', code: 'not-found' }],
    });
    expect((await put(await place(), '2026-03-01')).kind).toBe('invalid');
  });
});
