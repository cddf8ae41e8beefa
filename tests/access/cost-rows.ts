import type { ReadContext } from '@/lib/access/context';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { noteCostInput, noteLotPriceInput } from '@/lib/records/cost/cost.input';
import { getCost } from '@/lib/records/cost/get-cost.query';
import { getLotPrice } from '@/lib/records/cost/get-lot-price.query';
import { noteCost } from '@/lib/records/cost/note-cost.command';
import { noteLotPrice } from '@/lib/records/cost/note-lot-price.command';
import { addSpawnLot } from '@/lib/records/spawn-lot/add-spawn-lot.command';
import { addSpawnLotInput } from '@/lib/records/spawn-lot/spawn-lot.input';
import { twentyBags } from '../support/shed';
import { command, type OperationRow, query } from './operation-rows';
import { arrange, type World } from './world';

const another = async ({ people, stock }: World) =>
  (await arrange(people.coordinator, startBatchInput, startBatch, twentyBags(people, stock))).id;

let lots = 0;
const anotherLot = async ({ people, stock }: World) => {
  lots += 1;
  const raw = {
    ...{ code: `PRICED-${lots}`, speciesId: stock.oyster, form: 'grain', madeOn: '2026-03-01' },
    ...{ siteId: people.millLane },
  };
  return (await arrange(people.coordinator, addSpawnLotInput, addSpawnLot, raw)).id;
};

/** What a batch cost is its site's; what a lot cost is known to the network, as the lot is. */
export const costRows: readonly OperationRow[] = [
  command('records/cost/note-cost.command', 'yy---', noteCostInput, noteCost, async (w) => ({
    ...{ id: newId(), of: 'batch', about: await another(w), labourMinutes: '90', supplies: '3.5' },
  })),
  query(
    'records/cost/get-cost.query',
    'yy---',
    (c: ReadContext, w) => getCost(c, 'batch', w.batch),
    (a) => a !== undefined,
  ),
  command('records/cost/note-lot-price.command', 'yyy--', noteLotPriceInput, noteLotPrice, async (w) => ({
    ...{ id: newId(), of: 'spawn-lot', about: await anotherLot(w), paid: '25', mass: 2_000 },
  })),
  {
    file: 'records/cost/get-lot-price.query',
    may: 'yyy--',
    prepare: anotherLot,
    attempt: async (_world, actor, lot) =>
      (await readAs(actor, (context) => getLotPrice(context, 'spawn-lot', String(lot)))) !== undefined,
  },
];
