import { describe, expect, it } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { getCost } from '@/lib/records/cost/get-cost.query';
import { getLotPrice } from '@/lib/records/cost/get-lot-price.query';
import { startBags } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { historyOf, shed } from '../../support/shed';
import { costBatch, costRun, priceLot } from './cost-notes';

const { superuser } = await testDatabase();
const people = await growers(superuser);
const stock = await shed(people);
const { coordinator, member, neighbour } = people;

const seen = (batchId: string) => readAs(member, (context) => getCost(context, 'batch', batchId));

describe('what a batch cost', () => {
  it('is kept in minutes and whole cents; what is left out stays unknown and 0 stays 0', async () => {
    const batchId = await startBags(people, stock);
    expect((await costBatch(member, batchId, { fuel: '' })).kind).toBe('ok');
    expect(await seen(batchId)).toMatchObject({
      currency: 'USD',
      note: { labourMinutes: 90, suppliesMinor: 350, fuelMinor: null, waterMinor: 0 },
    });
  });

  it('is changed on the page it was read from, with a reason and its history', async () => {
    const batchId = await startBags(people, stock);
    await costBatch(member, batchId);
    const id = (await seen(batchId))?.note?.id ?? '';
    expect(await costBatch(member, batchId, { revision: 1, fuel: '1' })).toMatchObject({
      errors: [{ field: 'reason', code: 'missing' }],
    });
    const change = { revision: 1, reason: 'misread', fuel: '1' };
    expect((await costBatch(member, batchId, change)).kind).toBe('ok');
    expect(await costBatch(member, batchId, change)).toEqual({ kind: 'conflict', current: 2 });
    expect(await seen(batchId)).toMatchObject({ note: { fuelMinor: 100, revision: 2 } });
    expect(await historyOf(coordinator, id)).toHaveLength(2);
  });

  it('that was written down by another in the meantime is a conflict, and a repeat is the same', async () => {
    const batchId = await startBags(people, stock);
    const id = newId();
    await costBatch(member, batchId, { id });
    expect(await costBatch(member, batchId, { id })).toEqual({ kind: 'ok', value: { id } });
    expect(await costBatch(coordinator, batchId, { id: newId() })).toEqual({ kind: 'conflict', current: 1 });
  });

  it("is not there for another site's member, nor is what a run cost", async () => {
    const batchId = await startBags(people, stock);
    expect((await costBatch(neighbour, batchId)).kind).toBe('not-found');
    expect((await costRun(neighbour, stock.bathRun)).kind).toBe('not-found');
    expect((await costRun(member, stock.bathRun)).kind).toBe('ok');
    expect(await readAs(neighbour, (context) => getCost(context, 'batch', batchId))).toBeUndefined();
  });

  it('of nothing at all is refused', async () => {
    const batchId = await startBags(people, stock);
    const empty = { labourMinutes: '', supplies: '', fuel: '', water: '', note: 'nobody knows' };
    expect(await costBatch(member, batchId, empty)).toMatchObject({
      errors: [{ field: 'labourMinutes', code: 'cost-empty' }],
    });
  });

  it('takes no minutes below nothing and no half cents', async () => {
    const batchId = await startBags(people, stock);
    expect(await costBatch(member, batchId, { supplies: '1.005' })).toMatchObject({
      errors: [{ field: 'supplies', code: 'money-too-fine' }],
    });
    expect(await costBatch(member, batchId, { labourMinutes: '-5' })).toMatchObject({
      errors: [{ field: 'labourMinutes' }],
    });
  });
});

describe('what a lot cost', () => {
  it('is what was paid for so much; every member reads it, and who wrote it or the coordinator mends it', async () => {
    expect((await priceLot(member, 'substrate-lot', stock.straw, '12', 300_000)).kind).toBe('ok');
    expect(
      await readAs(neighbour, (context) => getLotPrice(context, 'substrate-lot', stock.straw)),
    ).toMatchObject({ code: 'STRAW-1', price: { paidMinor: 1200, forGrams: 300_000 } });
    const change = { revision: 1, reason: 'cheaper' };
    const mend = (actor: typeof member) =>
      priceLot(actor, 'substrate-lot', stock.straw, '10', 300_000, change);
    expect((await mend(neighbour)).kind).toBe('not-found');
    expect((await mend(coordinator)).kind).toBe('ok');
  });
});
