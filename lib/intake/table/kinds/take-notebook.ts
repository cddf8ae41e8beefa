import 'server-only';
import { attempt } from '@/lib/access/attempt';
import type { WriteContext } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import { type Failure, ok, type Result } from '@/lib/base/result';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { KnownKeys } from '../known-keys';
import { plainCode } from '../plain-words';
import type { RowValues } from '../read-row';
import { findReferences } from '../references';
import { problemsOf, type RowToTake, type TakenRow, type Taker, type TakeSettings } from '../taker';
import { rawBatch } from './take-batches';
import { findingKeys, rawFinding } from './take-findings';
import { harvestKeys, rawHarvest } from './take-harvests';

const harvestNames = [
  'weighedOn',
  'fresh',
  'flush',
  'trimState',
  'sold',
  'given',
  'kept',
  'discarded',
  'grade',
];
const findingNames = ['contaminated', 'foundOn', 'sign'];

type Part = { readonly id: string; readonly made: boolean };

function only(values: RowValues, names: readonly string[]): Map<string, unknown> {
  return new Map([...values].filter(([name]) => names.includes(name)));
}

/** Takes lines that hold what several tables do: each starts its batch where there is none, then adds what it says. */
export function takeNotebook(settings: TakeSettings): Taker {
  const { siteId, region, rowsByText, usedUp } = settings;
  const batches = new Map<string, string>();
  const asked = new Set<string>();
  const harvests = new KnownKeys(usedUp);
  const findings = new KnownKeys(usedUp);
  let lines: Promise<ReadonlyMap<string, number>> | undefined;

  async function batchOf(context: WriteContext, values: RowValues, code: string): Promise<Result<Part>> {
    const plain = plainCode(code);
    if (!asked.has(plain)) {
      asked.add(plain);
      const there = (await findReferences(context, 'batch', [plain])).get(plain);
      if (there) batches.set(plain, there);
    }
    const known = batches.get(plain);
    if (known !== undefined) return ok({ id: known, made: false });
    lines ??= rowsByText('code');
    // One line per bag: a notebook without a number of bags has as many as lines.
    const count = values.get('unitCount') ?? { text: String((await lines).get(plain) ?? 1), unit: null };
    const without = [...harvestNames, ...findingNames, ...(values.has('fresh') ? ['note'] : [])];
    const own = new Map([...values].filter(([name]) => !without.includes(name)));
    const input = parseInput(startBatchInput, rawBatch(own.set('unitCount', count), siteId), region);
    if (input.kind !== 'ok') return input;
    const made = await startBatch(context, input.value);
    return made.kind === 'ok' ? ok({ id: made.value.id, made: true }) : made;
  }

  async function harvestOf(context: WriteContext, values: RowValues, batch: string): Promise<Result<Part>> {
    const own = only(values, [...harvestNames, 'note']).set('batch', batch);
    const input = parseInput(recordWeighingInput, rawHarvest(own), region);
    if (input.kind !== 'ok') return input;
    await harvests.load([batch], (ids) => harvestKeys(context, ids));
    const { weighedOn, fresh } = input.value;
    const there = harvests.use(`${batch} ${weighedOn} ${fresh.grams}`);
    if (there !== undefined) return ok({ id: there, made: false });
    const made = await recordWeighing(context, input.value);
    return made.kind === 'ok' ? ok({ id: made.value.id, made: true }) : made;
  }

  async function findingOf(context: WriteContext, values: RowValues, batch: string): Promise<Result<Part>> {
    const raw = new Map<string, unknown>([
      ['batch', batch],
      ['units', values.get('contaminated')],
      ['foundOn', values.get('foundOn') ?? values.get('weighedOn')],
      ['sign', values.get('sign') ?? 'other'],
    ]);
    const input = parseInput(recordFindingInput, rawFinding(raw), region);
    if (input.kind !== 'ok') return input;
    await findings.load([batch], (ids) => findingKeys(context, ids));
    const { foundOn, units, sign } = input.value;
    const there = findings.use([batch, foundOn, units, sign].join(' '));
    if (there !== undefined) return ok({ id: there, made: false });
    const made = await recordFinding(context, input.value);
    return made.kind === 'ok' ? ok({ id: made.value.id, made: true }) : made;
  }

  async function partsOf(context: WriteContext, values: RowValues): Promise<Result<Part[]>> {
    const code = String(values.get('code') ?? '');
    const batch = await batchOf(context, values, code);
    if (batch.kind !== 'ok') return batch;
    const parts: Part[] = [batch.value];
    const nothing = /^0*$/;
    const typed = values.get('contaminated');
    const none =
      typed === undefined ||
      (typeof typed === 'object' && typed !== null && 'text' in typed && nothing.test(String(typed.text)));
    const steps = [...(values.has('fresh') ? [harvestOf] : []), ...(none ? [] : [findingOf])];
    for (const step of steps) {
      const part = await step(context, values, batch.value.id);
      if (part.kind !== 'ok') return part;
      parts.push(part.value);
    }
    return ok(parts);
  }

  async function takeOne(context: WriteContext, row: RowToTake): Promise<TakenRow> {
    if (row.errors.length > 0) return { kind: 'needs', problems: row.errors };
    const code = row.values.get('code');
    const missing: Failure = { kind: 'invalid', errors: [{ field: 'code', code: 'missing' }] };
    if (code === undefined) return { kind: 'needs', problems: problemsOf(missing) };
    const result = await attempt(context, () =>
      partsOf({ ...context, confirmed: row.confirmed }, row.values),
    );
    if (result.kind !== 'ok') return { kind: 'needs', problems: problemsOf(result) };
    const [batch] = result.value;
    if (batch?.made) batches.set(plainCode(String(code)), batch.id);
    // Parts that were there count as well: this row stands for them.
    const recordIds = result.value.map(({ id }) => id);
    return { kind: result.value.some((part) => part.made) ? 'new' : 'there', recordIds };
  }

  return {
    atOnce: 25,
    take: async (context, rows) => {
      const taken: TakenRow[] = [];
      for (const row of rows) taken.push(await takeOne(context, row));
      return taken;
    },
  };
}
