import { describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { addConditions } from '@/lib/records/condition/add-conditions.command';
import { addPlace } from '@/lib/records/condition/add-place.command';
import { addConditionsInput, addPlaceInput } from '@/lib/records/condition/condition.input';
import { getPlace } from '@/lib/records/condition/get-place.query';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { historyOf, shed } from '../../support/shed';
import { makePlace, put } from './a-place';

const { superuser } = await testDatabase();
const people = await growers(superuser);
const stock = await shed(people);
const { member, coordinator, neighbour, millLane } = people;

const read = (placeId: string, raw: object) =>
  runAs(member, addConditionsInput, addConditions, { placeId, ...raw }, { now: testDay });
const see = (placeId: string) => readAs(member, (context) => getPlace(context, placeId, testDay));

describe('a place', () => {
  it('has a name of its own at its site, whatever the capitals', async () => {
    await runAs(member, addPlaceInput, addPlace, { siteId: millLane, name: 'Cellar' });
    expect(await runAs(member, addPlaceInput, addPlace, { siteId: millLane, name: 'CELLAR' })).toMatchObject({
      kind: 'invalid',
      errors: [{ field: 'name', code: 'already-there' }],
    });
  });

  it("is not seen by another site's member", async () => {
    const id = await makePlace(member, millLane);
    expect(await readAs(neighbour, (context) => getPlace(context, id, testDay))).toBeUndefined();
  });

  it('cannot be voided while a batch has stood there', async () => {
    const placeId = await makePlace(member, millLane);
    const batchId = await startBags(people, stock);
    await put(member, batchId, placeId, '2026-04-02');
    const raw = { kind: 'condition-place', id: placeId, revision: 1, reason: 'gone' };
    expect(await runAs(member, voidRecordInput, voidRecord, raw)).toMatchObject({
      kind: 'invalid',
      errors: [{ code: 'still-in-use' }],
    });
  });
});

describe('a reading by hand', () => {
  it('keeps what was read, with its history', async () => {
    const placeId = await makePlace(member, millLane);
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
    const placeId = await makePlace(member, millLane);
    const raw = { id: newId(), celsius: '18.5' };
    await read(placeId, raw);
    expect((await read(placeId, raw)).kind).toBe('ok');
    expect((await see(placeId))?.typed).toHaveLength(1);
  });

  it('of nothing, of a day to come, or of the impossible is refused', async () => {
    const placeId = await makePlace(member, millLane);
    expect(await read(placeId, {})).toMatchObject({ kind: 'invalid', errors: [{ code: 'reading-empty' }] });
    expect(await read(placeId, { readAt: '2026-06-01T12:00:00Z', celsius: 20 })).toMatchObject({
      errors: [{ field: 'readAt', code: 'future-date' }],
    });
    expect(await read(placeId, { celsius: 95 })).toMatchObject({ errors: [{ code: 'too-large' }] });
  });

  it('of another value at the same instant is refused', async () => {
    const placeId = await makePlace(member, millLane);
    const readAt = '2026-05-19T12:00:00Z';
    await read(placeId, { readAt, celsius: 18 });
    expect(await read(placeId, { readAt, celsius: 19 })).toMatchObject({
      errors: [{ field: 'readAt', code: 'already-there' }],
    });
  });
});
