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
import { findingByHand, harvestsIn } from './finding-by-hand';

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
const findingNames = ['contaminated', 'foundOn', 'sign', 'stage', 'action', 'unitNumbers'];

const numbered = ['fresh2', 'weighedOn2'];

/** What says that there was a harvest or a finding, of which a line must not lose the rest. */
function halfSaid(values: RowValues): readonly FieldError[] {
  const says = (...names: string[]) => names.some((name) => values.has(name));
  const found = says('contaminated') || (says('foundOn', 'sign') && says('unitNumbers'));
  const harvest = says('sold', 'given', 'kept', 'discarded') || (says('weighedOn') && !found);
  return [
    ...(harvest && !says('fresh', 'fresh2') ? [{ field: 'fresh', code: 'missing' }] : []),
    ...(says('weighedOn2') && !says('fresh2') ? [{ field: 'fresh2', code: 'missing' }] : []),
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
    const noted = harvestsIn(values).length > 0 ? ['note'] : [];
    const without = [...harvestNames, ...numbered, ...findingNames, ...noted];
    const own = new Map([...values].filter(([name]) => !without.includes(name)));
    const input = parseInput(startBatchInput, rawBatch(own.set('unitCount', count), siteId), region);
    if (input.kind !== 'ok') return input;
    const question = askUnits(values.has('unitCount'), input.value.unitCount, lines);
    if (question !== undefined && !context.confirmed.has(question.code))
      return { kind: 'confirm', questions: [question] };
    const made = await startBatch(context, input.value);
    return made.kind === 'ok' ? ok({ id: made.value.id, made: true }) : made;
  }

  async function oneHarvest(context: WriteContext, own: RowValues, batch: string): Promise<Result<Part>> {
    const input = parseInput(recordWeighingInput, rawHarvest(new Map(own).set('batch', batch)), region);
    if (input.kind !== 'ok') return input;
    await harvests.load([batch], (ids) => harvestKeys(context, ids));
    const { weighedOn, fresh } = input.value;
    const key = `${batch} ${weighedOn} ${fresh.grams}`;
    const there = harvests.use(key);
    if (there !== undefined) {
      used.push(() => harvests.giveBack(key, there));
      return ok({ id: there, made: false });
    }
    const question = { field: 'fresh', code: 'intake-harvest-twice', values: { date: weighedOn } };
    if (harvests.has(key) && !context.confirmed.has(question.code))
      return { kind: 'confirm', questions: [question] };
    const made = await recordWeighing(context, input.value);
    if (made.kind !== 'ok') return made;
    harvests.claim(key);
    used.push(() => harvests.unclaim(key));
    return ok({ id: made.value.id, made: true });
  }

  const plainHarvest = (context: WriteContext, values: RowValues, batch: string) =>
    oneHarvest(context, only(values, [...harvestNames, 'note']), batch);

  async function secondHarvest(
    context: WriteContext,
    values: RowValues,
    batch: string,
  ): Promise<Result<Part>> {
    const alone = !values.has('fresh');
    const own = only(values, alone ? [...harvestNames, 'note'] : ['trimState']);
    own.set('fresh', values.get('fresh2')).set('flush', { text: '2', unit: null });
    const byLine = alone && !values.has('weighedOn2');
    if (values.has('weighedOn2')) own.set('weighedOn', values.get('weighedOn2'));
    else if (!alone) own.delete('weighedOn');
    const made = await oneHarvest(context, own, batch);
    const names: Record<string, string> = { fresh: 'fresh2', ...(byLine ? {} : { weighedOn: 'weighedOn2' }) };
    const renamed = <F extends { field: string }>(one: F) => ({
      ...one,
      field: names[one.field] ?? one.field,
    });
    if (made.kind === 'invalid') return { kind: 'invalid', errors: made.errors.map(renamed) };
    return made.kind === 'confirm' ? { kind: 'confirm', questions: made.questions.map(renamed) } : made;
  }

  async function findingOf(context: WriteContext, values: RowValues, batch: string): Promise<Result<Part>> {
    const { raw, open } = findingByHand(values, batch);
    const input = parseInput(recordFindingInput, rawFinding(raw), region);
    if (input.kind !== 'ok') return input;
    await findings.load([batch], (ids) => findingKeys(context, ids));
    const { foundOn: on, units, sign } = input.value;
    const there = findings.use([batch, on, units, sign].join(' '));
    if (there !== undefined) return ok({ id: there, made: false });
    const questions = open.filter(({ code }) => !context.confirmed.has(code));
    if (questions.length > 0) return { kind: 'confirm', questions };
    const sure = values.has('unitNumbers')
      ? { ...context, confirmed: new Set([...context.confirmed, 'already-recorded']) }
      : context;
    const made = await recordFinding(sure, input.value);
    return made.kind === 'ok' ? ok({ id: made.value.id, made: true }) : made;
  }

  async function partsOf(context: WriteContext, values: RowValues): Promise<Result<Part[]>> {
    const code = String(values.get('code') ?? '');
    const batch = await batchOf(context, values, code);
    if (batch.kind !== 'ok') return batch;
    const parts: Part[] = [batch.value];
    const nothing = /^0*$/;
    const typed = values.get('contaminated');
    const named = values.has('unitNumbers') && (values.has('foundOn') || values.has('sign'));
    const none =
      (typed === undefined && !named) ||
      (typeof typed === 'object' && typed !== null && 'text' in typed && nothing.test(String(typed.text)));
    const steps = [
      ...(values.has('fresh') ? [plainHarvest] : []),
      ...(values.has('fresh2') ? [secondHarvest] : []),
      ...(none ? [] : [findingOf]),
    ];
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
      for (const giveBack of used.reverse()) giveBack();
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
