import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { getPlace } from '@/lib/records/condition/get-place.query';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { historyOf } from '../../support/shed';
import { hours, layout, makePlace, takeIn } from './a-place';

const { superuser } = await testDatabase();
const people = await growers(superuser);
const { member, coordinator, millLane } = people;
const admin = new Client({ connectionString: superuser });
beforeAll(() => admin.connect());
afterAll(() => admin.end());

const see = (placeId: string) => readAs(member, (context) => getPlace(context, placeId, testDay));
async function count(placeId: string): Promise<number> {
  const { rows } = await admin.query(
    'select count(*)::int as n from condition_reading where place_id = $1 and voided_at is null',
    [placeId],
  );
  return Number(rows[0]?.n);
}

describe('a table of readings', () => {
  it('is taken in once; again, or overlapping, it adds only what is new', async () => {
    const placeId = await makePlace(member, millLane);
    expect(await takeIn(member, placeId, hours(48))).toMatchObject({ value: { read: 48, added: 48 } });
    expect(await takeIn(member, placeId, hours(48))).toMatchObject({ value: { read: 48, added: 0 } });
    expect(await takeIn(member, placeId, hours(60))).toMatchObject({ value: { read: 60, added: 12 } });
    expect(await count(placeId)).toBe(60);
  });

  it('is taken in as a whole or not at all', async () => {
    const placeId = await makePlace(member, millLane);
    const wrong = [...hours(3), { at: new Date('2026-05-02T12:00:00Z'), measure: 'humidity', value: 140 }];
    expect(await takeIn(member, placeId, wrong)).toMatchObject({
      errors: [{ code: 'reading-out-of-range' }],
    });
    expect(await count(placeId)).toBe(0);
  });

  it('leaves its layout for the next one, and one line of history for all its readings', async () => {
    const placeId = await makePlace(member, millLane);
    const id = newId();
    await takeIn(member, placeId, hours(5), { id });
    expect((await see(placeId))?.layout).toEqual(layout);
    expect((await historyOf(coordinator, id)).map(({ action }) => action)).toEqual(['created', 'changed']);
    const { rows } = await admin.query(
      `select count(*)::int as n from history h join condition_reading r on r.id = h.record_id where r.import_id = $1`,
      [id],
    );
    expect(rows[0]?.n).toBe(0);
  });

  it('that is voided takes its readings with it, and can be taken in anew', async () => {
    const placeId = await makePlace(member, millLane);
    const id = newId();
    await takeIn(member, placeId, hours(5), { id });
    const raw = { kind: 'condition-import', id, revision: 2, reason: 'wrong tent' };
    expect((await runAs(member, voidRecordInput, voidRecord, raw, { now: testDay })).kind).toBe('ok');
    expect(await count(placeId)).toBe(0);
    expect(await takeIn(member, placeId, hours(5))).toMatchObject({ value: { added: 5 } });
  });

  it('has no single reading that can be voided, and none whose value can be changed', async () => {
    const placeId = await makePlace(member, millLane);
    await takeIn(member, placeId, hours(1));
    const { rows } = await admin.query('select id from condition_reading where place_id = $1', [placeId]);
    const raw = { kind: 'condition-reading', id: rows[0]?.id, revision: 1, reason: 'x' };
    expect((await runAs(member, voidRecordInput, voidRecord, raw)).kind).toBe('not-found');
    const change = readAs(member, ({ db }) => db.conditionReading.updateMany({ data: { value: 1 } }));
    await expect(change).rejects.toThrow(/permission denied|42501|denied/i);
  });
});
