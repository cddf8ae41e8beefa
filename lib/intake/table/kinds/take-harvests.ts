import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import { newId } from '@/lib/base/new-id';
import { invalid, ok } from '@/lib/base/result';
import { idField } from '@/lib/records/fields/id-field';
import { afterWeighing } from '@/lib/records/weighing/after-weighing';
import { insertWeighings, type ReadyWeighing } from '@/lib/records/weighing/insert-weighings';
import { judgeWeighing } from '@/lib/records/weighing/prepare-weighing';
import {
  type EarlierHarvest,
  type WeighedBatch,
  weighedBatches,
} from '@/lib/records/weighing/weighed-batches';
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
import { askTwice } from './harvest-twice';
import { otherSite } from './other-batch';

/** A harvest that can be written. */
type Ready = ReadyWeighing & { readonly kind: 'ready' };

/** What the form of a harvest would have posted. */
export function rawHarvest(values: RowValues): unknown {
  const { batch, flush, site: _, ...rest } = Object.fromEntries(values);
  // In this order, since objects that gain a key after others were spread into them each get a shape of their own.
  return { lines: [{ batchId: batch, flush }], ...rest };
}

/** The batch that a row names, as its form will read it. */
function batchNamed(values: RowValues): readonly string[] {
  const named = idField.safeParse(values.get('batch'));
  return named.success ? [named.data] : [];
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

/** Harvests of one day and flush are one and the same: a hundred thousand have some hundred days. */
function oncePerDay(): (on: string, flush: number) => EarlierHarvest {
  const known = new Map<string, EarlierHarvest>();
  return (on, flush) => {
    const key = `${on} ${flush}`;
    const harvest = known.get(key) ?? { on, flush };
    known.set(key, harvest);
    return harvest;
  };
}

/** Takes harvests in bulk: batches are looked up once, each row is judged as by the form, a chunk is written at once. */
export function takeHarvests({ siteId, region, rehearsal, usedUp }: TakeSettings): Taker {
  const batches = new Map<string, WeighedBatch>();
  const keys = new KnownKeys(usedUp);
  const earlierOf = oncePerDay();
  const judge = ({ now }: WriteContext, { values, errors, confirmed }: RowToTake): TakenRow | Ready => {
    const input = parseInput(recordWeighingInput, rawHarvest(values), region);
    const wrong = withCellErrors(errors, input.kind === 'invalid' ? input.errors : []);
    if (wrong.length > 0) return { kind: 'needs', problems: wrong };
    if (input.kind !== 'ok') return { kind: 'needs', problems: problemsOf(input) };
    const { lines, weighedOn, fresh, tare } = input.value;
    const batch = batches.get(lines[0]?.batchId ?? '');
    if (batch === undefined)
      return { kind: 'needs', problems: problemsOf(invalid('lines.0.batchId', 'missing-choice')) };
    const elsewhere = otherSite(values, siteId, batch);
    if (elsewhere.length > 0) return { kind: 'needs', problems: elsewhere };
    const key = `${batch.id} ${weighedOn} ${fresh.grams}`;
    const there = keys.use(key);
    if (there !== undefined) return { kind: 'there', recordIds: [there] };
    const question = askTwice(keys, key, weighedOn, confirmed);
    if (question) return { kind: 'needs', problems: problemsOf(question) };
    const prepared = judgeWeighing({ now, confirmed }, input.value, [batch]);
    if (prepared.kind !== 'ok') return { kind: 'needs', problems: problemsOf(prepared) };
    batches.set(batch.id, afterWeighing(batch, prepared.value, earlierOf));
    keys.claim(key);
    return { kind: 'ready', id: newId(), input: { fresh, tare }, prepared: prepared.value };
  };
  const take = async (context: WriteContext, rows: readonly RowToTake[]): Promise<TakenRow[]> => {
    const asked = [...new Set(rows.flatMap(({ values }) => batchNamed(values)))];
    const unknown = asked.filter((id) => !batches.has(id));
    for (const batch of await weighedBatches(context, unknown, undefined)) batches.set(batch.id, batch);
    await keys.load(asked, (ids) => harvestKeys(context, ids));
    const ready: (Ready & { readonly at: number })[] = [];
    // Row by row from its cells to the end: 500 rows in each state between would be held at once.
    const taken = rows.map((row, at): TakenRow => {
      const one = judge(context, row);
      if (one.kind !== 'ready') return one;
      if (!rehearsal) ready.push({ at, ...one });
      return { kind: 'new', recordIds: [one.id] };
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
