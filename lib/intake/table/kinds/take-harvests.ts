import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import { newId } from '@/lib/base/new-id';
import { invalid, ok } from '@/lib/base/result';
import { afterWeighing } from '@/lib/records/weighing/after-weighing';
import { insertWeighings } from '@/lib/records/weighing/insert-weighings';
import { judgeWeighing, type PreparedWeighing } from '@/lib/records/weighing/prepare-weighing';
import { type WeighedBatch, weighedBatches } from '@/lib/records/weighing/weighed-batches';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { type KeyedRecord, KnownKeys } from '../known-keys';
import type { RowValues } from '../read-row';
import { takeApart } from '../take-apart';
import {
  problemsOf,
  type RowToTake,
  type TakenRow,
  type Taker,
  type TakeSettings,
  withCellErrors,
} from '../taker';
import { otherSite } from './other-batch';

type Ready = {
  readonly at: number;
  readonly id: string;
  readonly input: z.output<typeof recordWeighingInput>;
  readonly prepared: PreparedWeighing;
};

/** What the form of a harvest would have posted. */
export function rawHarvest(values: RowValues): unknown {
  const { batch, flush, site: _, ...rest } = Object.fromEntries(values);
  return { ...rest, lines: [{ batchId: batch, flush }] };
}

/** Harvests that these batches have already, voided ones too: what was taken out on purpose does not come back. */
export async function harvestKeys(
  { db, actor }: WriteContext,
  batchIds: readonly string[],
): Promise<KeyedRecord[]> {
  return await db.$queryRaw<KeyedRecord[]>`
    select l.batch_id::text || ' ' || w.weighed_on::text || ' ' || l.fresh_grams::text as key, w.id::text as id
    from public.weighing_line l
    join public.weighing w on w.network_id = l.network_id and w.id = l.weighing_id
    where l.network_id = ${actor.networkId}::uuid and l.batch_id = any(${batchIds}::uuid[])
      and (l.voided_at is null or w.voided_at is not null)`;
}

/** Takes harvests in bulk: batches are looked up once, each row is judged as by the form, a chunk is written at once. */
export function takeHarvests({ siteId, region, rehearsal, usedUp }: TakeSettings): Taker {
  const batches = new Map<string, WeighedBatch>();
  const keys = new KnownKeys(usedUp);
  const take = async (context: WriteContext, rows: readonly RowToTake[]): Promise<TakenRow[]> => {
    const inputs = rows.map((row) => {
      const input = parseInput(recordWeighingInput, rawHarvest(row.values), region);
      const errors = withCellErrors(row.errors, input.kind === 'invalid' ? input.errors : []);
      return errors.length > 0 ? ({ kind: 'invalid', errors } as const) : input;
    });
    const asked = inputs.flatMap((input) =>
      input.kind === 'ok' ? input.value.lines.map(({ batchId }) => batchId) : [],
    );
    const unknown = [...new Set(asked)].filter((id) => !batches.has(id));
    for (const batch of await weighedBatches(context, unknown, undefined)) batches.set(batch.id, batch);
    await keys.load(asked, (ids) => harvestKeys(context, ids));
    const ready: Ready[] = [];
    const taken = inputs.map((input, at): TakenRow => {
      if (input.kind !== 'ok') return { kind: 'needs', problems: problemsOf(input) };
      const { lines, weighedOn, fresh } = input.value;
      const batch = batches.get(lines[0]?.batchId ?? '');
      if (batch === undefined)
        return { kind: 'needs', problems: problemsOf(invalid('lines.0.batchId', 'missing-choice')) };
      const elsewhere = otherSite(rows[at]?.values ?? new Map(), siteId, batch);
      if (elsewhere.length > 0) return { kind: 'needs', problems: elsewhere };
      const there = keys.use(`${batch.id} ${weighedOn} ${fresh.grams}`);
      if (there !== undefined) return { kind: 'there', recordIds: [there] };
      const confirmed = rows[at]?.confirmed ?? new Set();
      const prepared = judgeWeighing({ now: context.now, confirmed }, input.value, [batch]);
      if (prepared.kind !== 'ok') return { kind: 'needs', problems: problemsOf(prepared) };
      batches.set(batch.id, afterWeighing(batch, prepared.value));
      const id = newId();
      ready.push({ at, id, input: input.value, prepared: prepared.value });
      return { kind: 'new', recordIds: [id] };
    });
    if (rehearsal) return taken;
    const refused = await takeApart(
      context,
      ready,
      async (some) => {
        await insertWeighings(context, some);
        return ok(some.map(() => undefined));
      },
      (failure) => failure,
    );
    for (const [index, failure] of refused.entries()) {
      const one = ready[index];
      if (failure && one) taken[one.at] = { kind: 'needs', problems: problemsOf(failure) };
    }
    return taken;
  };
  return { atOnce: 500, take };
}
