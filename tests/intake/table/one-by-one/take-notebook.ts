import { attempt } from '@/lib/access/attempt';
import type { WriteContext } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import { type Failure, type FieldError, invalid, ok, type Result } from '@/lib/base/result';
import { askUnits, type NotebookCodes, notebookCodes } from '@/lib/intake/table/kinds/notebook-codes';
import { type NamedBatch, otherBatch } from '@/lib/intake/table/kinds/other-batch';
import { rawBatch } from '@/lib/intake/table/kinds/take-batches';
import { findingKeys, rawFinding } from '@/lib/intake/table/kinds/take-findings';
import { harvestKeys, rawHarvest } from '@/lib/intake/table/kinds/take-harvests';
import { KnownKeys } from '@/lib/intake/table/known-keys';
import { codeForm } from '@/lib/intake/table/plain-words';
import type { RowValues } from '@/lib/intake/table/read-row';
import {
  problemsOf,
  type RowToTake,
  type TakenRow,
  type Taker,
  type TakeSettings,
} from '@/lib/intake/table/taker';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { asCalendarDate } from '@/lib/records/fields/stored-date';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFinding } from '@/lib/records/finding/record-finding.command';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';

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

/** What says that there was a harvest or a finding, of which a line must not lose the rest. */
function halfSaid(values: RowValues): readonly FieldError[] {
  const says = (...names: string[]) => names.some((name) => values.has(name));
  const found = says('contaminated');
  const harvest = says('sold', 'given', 'kept', 'discarded') || (says('weighedOn') && !found);
  return [
    ...(harvest && !says('fresh') ? [{ field: 'fresh', code: 'missing' }] : []),
    ...(says('foundOn', 'sign') && !found ? [{ field: 'units', code: 'missing' }] : []),
  ];
}

type Part = { readonly id: string; readonly made: boolean };

function only(values: RowValues, names: readonly string[]): Map<string, unknown> {
  return new Map([...values].filter(([name]) => names.includes(name)));
}

/** Takes lines of a notebook one by one through the commands of the forms: what the lines of a group must come to as well. */
export function takeNotebookByForms(settings: TakeSettings): Taker {
  const { siteId, region, rowsByText, usedUp } = settings;
  const batches = new Map<string, NamedBatch & { readonly id: string }>();
  const harvests = new KnownKeys(usedUp);
  const findings = new KnownKeys(usedUp);
  let codes: Promise<NotebookCodes> | undefined;
  let used: (() => void)[] = [];

  async function readBatch({ db }: WriteContext, id: string) {
    const row = await db.batch.findFirstOrThrow({ where: { id } });
    return { ...row, inoculatedOn: asCalendarDate(row.inoculatedOn) };
  }

  /** The batch that was there, or that an earlier line has started; undefined where there is none. */
  async function knownBatch(
    context: WriteContext,
    code: string,
  ): Promise<Result<NamedBatch & { id: string }> | undefined> {
    const before = batches.get(codeForm(code));
    if (before !== undefined) return ok(before);
    codes ??= notebookCodes(context, rowsByText);
    const id = (await codes).find(code);
    if (id === null) return invalid('code', 'intake-two-codes', { text: code });
    if (id === undefined) return undefined;
    const batch = await readBatch(context, id);
    batches.set(codeForm(code), batch);
    return ok(batch);
  }

  async function batchOf(context: WriteContext, values: RowValues, code: string): Promise<Result<Part>> {
    const known = await knownBatch(context, code);
    if (known !== undefined && known.kind !== 'ok') return known;
    if (known !== undefined) {
      const errors = otherBatch(values, siteId, known.value);
      return errors.length > 0 ? { kind: 'invalid', errors } : ok({ id: known.value.id, made: false });
    }
    codes ??= notebookCodes(context, rowsByText);
    const lines = (await codes).lines(code);
    const count = values.get('unitCount') ?? { text: String(lines), unit: null };
    const without = [...harvestNames, ...findingNames, ...(values.has('fresh') ? ['note'] : [])];
    const own = new Map([...values].filter(([name]) => !without.includes(name)));
    const input = parseInput(startBatchInput, rawBatch(own.set('unitCount', count), siteId), region);
    if (input.kind !== 'ok') return input;
    const question = askUnits(values.has('unitCount'), input.value.unitCount, lines);
    if (question !== undefined && !context.confirmed.has(question.code))
      return { kind: 'confirm', questions: [question] };
    const made = await startBatch(context, input.value);
    return made.kind === 'ok' ? ok({ id: made.value.id, made: true }) : made;
  }

  async function harvestOf(context: WriteContext, values: RowValues, batch: string): Promise<Result<Part>> {
    const own = only(values, [...harvestNames, 'note']).set('batch', batch);
    const input = parseInput(recordWeighingInput, rawHarvest(own), region);
    if (input.kind !== 'ok') return input;
    await harvests.load([batch], (ids) => harvestKeys(context, ids));
    const { weighedOn, fresh } = input.value;
    const key = `${batch} ${weighedOn} ${fresh.grams}`;
    const there = harvests.use(key);
    if (there !== undefined) {
      used.push(() => harvests.giveBack(key, there));
      return ok({ id: there, made: false });
    }
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
    const half = halfSaid(row.values);
    if (half.length > 0) return { kind: 'needs', problems: half };
    used = [];
    const result = await attempt(context, () =>
      partsOf({ ...context, confirmed: row.confirmed }, row.values),
    );
    if (result.kind !== 'ok') {
      for (const giveBack of used) giveBack();
      return { kind: 'needs', problems: problemsOf(result) };
    }
    const [batch] = result.value;
    if (batch?.made) batches.set(codeForm(String(code)), await readBatch(context, batch.id));
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
