import 'server-only';
import type { z } from 'zod';
import type { OneOfMany } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
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
import { askUnits } from './notebook-codes';
import type { BatchFacts, KnownBatch } from './notebook-facts';
import { rawFindingOf, rawHarvestOf } from './notebook-line';

export type StartInput = z.output<typeof startBatchInput>;

/** What one part of a line is: a record that was there, or one to be made. */
export type Part<T> = { readonly id: string; readonly made?: T; readonly giveBack?: () => void };

export type Judging = { readonly now: Date; readonly region: string };

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

/** The harvest of a line. */
export function harvestPart(
  { now, region }: Judging,
  { values, confirmed }: RowToTake,
  { named, weighed }: BatchFacts,
  keys: KnownKeys,
): Result<Part<ReadyWeighing>> {
  const read = parseInput(recordWeighingInput, rawHarvestOf(values, named.id), region);
  if (read.kind !== 'ok') return read;
  const input = read.value;
  const before = there(keys, `${named.id} ${input.weighedOn} ${input.fresh.grams}`);
  if (before) return ok(before);
  const prepared = judgeWeighing({ now, confirmed }, input, weighed ? [weighed] : []);
  if (prepared.kind !== 'ok') return prepared;
  const id = newId();
  return ok({ id, made: { id, input, prepared: prepared.value } });
}

/** The finding of a line. */
export function findingPart(
  { now, region }: Judging,
  { values, confirmed }: RowToTake,
  { named, found }: BatchFacts,
  keys: KnownKeys,
): Result<Part<ReadyFinding>> {
  const read = parseInput(recordFindingInput, rawFindingOf(values, named.id), region);
  if (read.kind !== 'ok') return read;
  const { foundOn, units, sign } = read.value;
  const before = there(keys, [named.id, foundOn, units, sign].join(' '));
  if (before) return ok(before);
  const failure = judgeFinding({ now, confirmed }, read.value, found);
  if (failure || !found) return failure ?? notFound;
  const id = newId();
  return ok({ id, made: { id, batchId: named.id, siteId: found.siteId, input: read.value } });
}
