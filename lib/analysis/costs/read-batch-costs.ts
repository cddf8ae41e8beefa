import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type BatchCost, batchCost } from '@/lib/growing/batch-cost';
import { mixed, notRecorded, secondLife } from '../comparison/comparison-filter.input';
import type { Period } from '../production/read-production';
import { grouped } from '../programme/grouped';
import {
  type BoughtRow,
  type CostBatch,
  readBoughtSpawn,
  readBoughtSubstrate,
  readCostBatches,
} from './read-cost-rows';
import { type RunShare, readRunShares } from './read-run-shares';

export type CostedRow = {
  readonly row: CostBatch;
  readonly treatments: readonly RunShare[];
  readonly runIds: readonly string[];
  readonly cost: BatchCost;
};

/** What each batch closed and inoculated in a period cost, or what is missing of it, in one currency. */
export async function readBatchCosts(
  context: ReadContext,
  period: Period,
  currency: string,
  labourMinorPerHour: number | null,
): Promise<CostedRow[]> {
  const rows = await readCostBatches(context, period, currency);
  const substrate = grouped(await readBoughtSubstrate(context, period, currency), ({ batchId }) => batchId);
  const spawn = grouped(await readBoughtSpawn(context, period, currency), ({ batchId }) => batchId);
  const runs = await readRunShares(context, period, currency);
  return rows.map((row) => {
    const treatments = runs.get(row.id) ?? [];
    const facts = {
      substrates: (substrate.get(row.id) ?? []).map(bought),
      spawns: spawnOf(row, spawn.get(row.id) ?? []).map(bought),
      own: row,
      treatments,
    };
    return {
      row,
      treatments,
      runIds: treatments.flatMap(({ runId }) => runId ?? []),
      cost: batchCost(facts, labourMinorPerHour),
    };
  });
}

/** A batch's method as rows of costs name it: method id, `mixed`, `second-life` or `none`. */
export function costMethodKey({ methodId, mixedMethod, secondLife: later }: CostBatch): string {
  if (later) return secondLife;
  return mixedMethod ? mixed : (methodId ?? notRecorded);
}

function bought({ grams, paidMinor, forGrams }: BoughtRow) {
  return { grams, price: paidMinor === null || forGrams === null ? null : { paidMinor, forGrams } };
}

/** A single share without a mass of its own has the batch's. */
function spawnOf({ spawnGrams }: CostBatch, shares: readonly BoughtRow[]): BoughtRow[] {
  return shares.map((share) => ({
    ...share,
    grams: share.grams ?? (shares.length === 1 ? spawnGrams : null),
  }));
}
