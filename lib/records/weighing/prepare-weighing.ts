import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import {
  type Failure,
  type FieldError,
  invalid,
  notFound,
  ok,
  type Question,
  type Result,
} from '@/lib/base/result';
import type { Destination, TrimState } from '@/lib/database/generated/enums';
import { proposeFlush } from '@/lib/growing/propose-flush';
import { splitSharedMass } from '@/lib/growing/split-shared-mass';
import { checkEventDate } from '../batch/check-event-date';
import { asDate } from '../fields/stored-date';
import { implausibleYield, impossibleYield } from './implausible-yield';
import { type WeighedBatch, weighedBatches } from './weighed-batches';
import type { WeighingInput } from './weighing.input';

export type PreparedWeighing = {
  readonly siteId: string;
  readonly row: {
    weighedOn: Date;
    freshGrams: number;
    trimState: TrimState;
    grade: string | null;
    note: string | null;
  };
  readonly lines: readonly {
    batchId: string;
    flush: number;
    freshGrams: number;
    sharedWeighing: boolean;
    forcedFlush: boolean | null;
  }[];
  readonly destinations: readonly { destination: Destination; grams: number }[];
};

/** Checks a weighing against its batches and works out lines, flushes and destinations. */
export async function prepareWeighing(
  context: WriteContext,
  input: WeighingInput,
  replaces: string | undefined,
): Promise<Result<PreparedWeighing>> {
  const ids = input.lines.map((line) => line.batchId);
  const twice = new Set(ids).size !== ids.length;
  return judgeWeighing(context, input, twice ? [] : await weighedBatches(context, ids, replaces));
}

/** The same for batches that were looked up beforehand, in the order of the lines; asks the database nothing. */
export function judgeWeighing(
  context: Pick<WriteContext, 'now' | 'confirmed'>,
  input: WeighingInput,
  batches: readonly WeighedBatch[],
): Result<PreparedWeighing> {
  if (input.lines.length === 0) return invalid('lines.0.batchId', 'missing-choice');
  const ids = input.lines.map((line) => line.batchId);
  if (new Set(ids).size !== ids.length) return invalid('lines.1.batchId', 'batch-twice');
  const [first] = batches;
  if (!first || batches.length !== ids.length) return notFound;
  if (batches.some((batch) => batch.siteId !== first.siteId)) return invalid('lines.1.batchId', 'other-site');
  for (const batch of batches) {
    const wrongDate = checkEventDate('weighedOn', input.weighedOn, batch, context.now);
    if (wrongDate) return wrongDate;
  }
  const masses = lineMasses(input, batches);
  if (!Array.isArray(masses)) return masses;
  const destinations = destinationsOf(input);
  const placed = destinations.reduce((sum, { grams }) => sum + grams, 0);
  if (placed > input.fresh.grams)
    return invalid('sold', 'sum-over', { sum: `${placed} g`, whole: `${input.fresh.grams} g` });
  const impossible = batches.flatMap((batch, index): FieldError[] =>
    impossibleYield(batch, masses[index] ?? 0),
  );
  if (impossible.length > 0) return { kind: 'invalid', errors: impossible };
  const questions = batches.flatMap((batch, index): Question[] =>
    implausibleYield(batch, masses[index] ?? 0),
  );
  const open = questions.filter((question) => !context.confirmed.has(question.code));
  if (open.length > 0) return { kind: 'confirm', questions: open };
  const own = input.lines.length === 1 || input.lines.every((line) => line.fresh !== null);
  return ok({
    siteId: first.siteId,
    row: {
      weighedOn: asDate(input.weighedOn),
      freshGrams: input.fresh.grams,
      trimState: input.trimState ?? first.site.trimDefault,
      grade: input.grade,
      note: input.note,
    },
    lines: input.lines.map((line, index) => ({
      batchId: line.batchId,
      flush: line.flush ?? proposeFlush(batches[index]?.earlier ?? [], input.weighedOn),
      freshGrams: masses[index] ?? 0,
      sharedWeighing: !own,
      forcedFlush: line.forcedFlush === null ? null : line.forcedFlush === 'yes',
    })),
    destinations,
  });
}

/** The mass of each line in grams: as typed when all were, by live units when none was. */
function lineMasses(input: WeighingInput, batches: readonly WeighedBatch[]): number[] | Failure {
  const typed = input.lines.map((line) => line.fresh);
  if (input.lines.length === 1 && typed[0] === null) return [input.fresh.grams];
  if (typed.every((grams) => grams === null))
    return splitSharedMass(
      input.fresh.grams,
      batches.map((batch) => batch.liveUnits),
    );
  const missing = typed.indexOf(null);
  if (missing >= 0) return invalid(`lines.${missing}.fresh`, 'missing');
  const sum = typed.reduce<number>((total, grams) => total + (grams ?? 0), 0);
  if (sum !== input.fresh.grams)
    return invalid('fresh', 'sums-differ', { sum: `${sum} g`, whole: `${input.fresh.grams} g` });
  return typed.map((grams) => grams ?? 0);
}

function destinationsOf(input: WeighingInput): { destination: Destination; grams: number }[] {
  const given = { sold: input.sold, given: input.given, kept: input.kept, discarded: input.discarded };
  return (Object.entries(given) as [Destination, number | null][]).flatMap(([destination, grams]) =>
    grams === null || grams === 0 ? [] : [{ destination, grams }],
  );
}
