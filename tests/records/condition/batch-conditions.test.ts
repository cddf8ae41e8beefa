import { describe, expect, it } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { getBatchConditions } from '@/lib/records/condition/get-batch-conditions.query';
import { startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { shed } from '../../support/shed';
import { hours, makePlace, put, takeIn } from './a-place';

const { superuser } = await testDatabase();
const people = await growers(superuser);
const stock = await shed(people);
const { member, coordinator, millLane } = people;

describe('the conditions of a batch', () => {
  it('are those of each place while it stood there', async () => {
    const batchId = await startBags(people, stock);
    const cellar = await makePlace(member, millLane);
    const tent = await makePlace(member, millLane);
    expect((await put(member, batchId, cellar, '2026-05-01')).kind).toBe('ok');
    expect((await put(member, batchId, tent, '2026-05-03')).kind).toBe('ok');
    await takeIn(member, cellar, hours(24 * 5, '2026-05-01T04:00:00Z', 20));
    await takeIn(member, tent, hours(24 * 5, '2026-05-01T04:00:00Z', 10));
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
    const first = await makePlace(member, millLane);
    const second = await makePlace(member, millLane);
    for (const placeId of [first, second]) await put(member, batchId, placeId, '2026-05-01');
    const seen = await readAs(member, (context) => getBatchConditions(context, batchId, testDay));
    expect(seen?.stays.map(({ placeId }) => placeId)).toEqual([second]);
  });

  it('cannot name a place of another site, nor a day before the batch', async () => {
    const batchId = await startBags(people, stock);
    const shedOfQuarry = await makePlace(coordinator, people.quarry);
    expect(await put(coordinator, batchId, shedOfQuarry, '2026-05-01')).toMatchObject({
      errors: [{ field: 'placeId', code: 'not-found' }],
    });
    expect((await put(member, batchId, await makePlace(member, millLane), '2026-03-01')).kind).toBe(
      'invalid',
    );
  });
});
