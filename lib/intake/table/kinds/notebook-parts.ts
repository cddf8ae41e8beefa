import 'server-only';
import type { z } from 'zod';
import type { OneOfMany } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import { newId } from '@/lib/base/new-id';
import { type Failure, notFound, ok, type Result } from '@/lib/base/result';
import { storedBatchCode } from '@/lib/records/batch/insert-batch';
import type { ReadyBatch } from '@/lib/records/batch/insert-started';
import type { PreparedBatch } from '@/lib/records/batch/prepare-batch';
import type { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import type { ReadyFinding } from '@/lib/records/finding/insert-findings';
import { judgeFinding } from '@/lib/records/finding/judge-finding';
import type { ReadyWeighing } from '@/lib/records/weighing/insert-weighings';
import { judgeWeighing } from '@/lib/records/weighing/prepare-weighing';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import type { KnownKeys } from '../known-keys';
import type { RowToTake } from '../taker';
import { findingOfLine } from './finding-of-line';
import { askTwice } from './harvest-twice';
import { askUnits } from './notebook-codes';
import type { BatchFacts, KnownBatch } from './notebook-facts';
import { rawHarvestOf } from './notebook-line';
import type { LineHarvest } from './numbered-harvests';

export type StartInput = z.output<typeof startBatchInput>;

/** What one part of a line is: a record that was there, or one to be made. */
export type Part<T> = { readonly id: string; readonly made?: T; readonly giveBack?: () => void };

export type Judging = {
  readonly now: Date;
  readonly region: string;
  /** Of whoever brings the table: what is noted beside a record is in it. */
  readonly language: string;
};

function there(keys: KnownKeys, key: string): Part<never> | undefined {
  const id = keys.use(key);
  return id === undefined ? undefined : { id, giveBack: () => keys.giveBack(key, id) };
}

/** The batch that a line starts, which `lines` name. */
export function startPart(
  { values, confirmed }: RowToTake,
  input: StartInput,
  lines: number,
  judge: (one: OneOfMany<StartInput>) => Result<PreparedBatch>,
): Result<ReadyBatch & { readonly named: KnownBatch }> {
  const question = askUnits(values.has('unitCount'), input.unitCount, lines);
  if (question !== undefined && !confirmed.has(question.code))
    return { kind: 'confirm', questions: [question] };
  const prepared = judge({ input, confirmed });
  if (prepared.kind !== 'ok') return prepared;
  const { siteId, speciesId, inoculatedOn } = input;
  const [id, code] = [newId(), storedBatchCode(input.code ?? '')];
  return ok({
    input: { ...input, id },
    prepared: prepared.value,
    named: { id, code, siteId, speciesId, inoculatedOn },
  });
}

/** A line of several harvests calls each its own: what stands against one names its columns. */
function namedAs(failure: Failure, { fresh, weighedOn }: LineHarvest['named']): Failure {
  const names: Readonly<Record<string, string>> = { fresh, weighedOn };
  const renamed = <F extends { readonly field: string }>(one: F): F => ({
    ...one,
    field: names[one.field] ?? one.field,
  });
  if (failure.kind === 'invalid') return { kind: 'invalid', errors: failure.errors.map(renamed) };
  return failure.kind === 'confirm'
    ? { kind: 'confirm', questions: failure.questions.map(renamed) }
    : failure;
}

/** One harvest of a line. */
export function harvestPart(
  { now, region }: Judging,
  confirmed: ReadonlySet<string>,
  harvest: LineHarvest,
  { named, weighed }: BatchFacts,
  keys: KnownKeys,
): Result<Part<ReadyWeighing>> {
  const read = parseInput(recordWeighingInput, rawHarvestOf(harvest, named.id), region);
  if (read.kind !== 'ok') return namedAs(read, harvest.named);
  const input = read.value;
  const key = `${named.id} ${input.weighedOn} ${input.fresh.grams}`;
  const before = there(keys, key);
  if (before) return ok(before);
  const question = askTwice(keys, key, input.weighedOn, confirmed);
  if (question) return namedAs(question, harvest.named);
  const prepared = judgeWeighing({ now, confirmed }, input, weighed ? [weighed] : []);
  if (prepared.kind !== 'ok') return namedAs(prepared, harvest.named);
  const id = newId();
  keys.claim(key);
  return ok({ id, made: { id, input, prepared: prepared.value }, giveBack: () => keys.unclaim(key) });
}

/** The finding of a line. */
export function findingPart(
  { now, region, language }: Judging,
  { values, confirmed }: RowToTake,
  { named, found }: BatchFacts,
  keys: KnownKeys,
): Result<Part<ReadyFinding>> {
  const { raw, questions } = findingOfLine(values, named.id, language);
  const read = parseInput(recordFindingInput, raw, region);
  if (read.kind !== 'ok') return read;
  const { foundOn, units, sign, unitNumbers } = read.value;
  const before = there(keys, [named.id, foundOn, units, sign].join(' '));
  if (before) return ok(before);
  const open = questions.filter(({ code }) => !confirmed.has(code));
  if (open.length > 0) return { kind: 'confirm', questions: open };
  // Two bags with numbers of their own are two findings, however alike.
  const sure = unitNumbers.length > 0 ? new Set([...confirmed, 'already-recorded']) : confirmed;
  const failure = judgeFinding({ now, confirmed: sure }, read.value, found);
  if (failure || !found) return failure ?? notFound;
  const id = newId();
  return ok({ id, made: { id, batchId: named.id, siteId: found.siteId, input: read.value } });
}
