import 'server-only';
import { z } from 'zod';
import type { OneOfMany, WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Question, type Result } from '@/lib/base/result';
import { readingPlaces } from '@/lib/growing/vocabulary';
import { optionalCelsiusField } from '@/lib/records/fields/celsius-field';
import { optionalChoiceField } from '@/lib/records/fields/choice-field';
import { optionalMinutesField } from '@/lib/records/fields/minutes-field';
import { momentInstant } from '@/lib/records/fields/moment-instant';
import { optionalPhField } from '@/lib/records/fields/ph-field';
import { judgeReading, type ReadingColumns, type ReadRunOf } from '@/lib/records/treatment/judge-reading';
import { runLookups } from '@/lib/records/treatment/prepare-treatment';
import { startTreatments } from '@/lib/records/treatment/start-treatments';
import { startTreatmentInput } from '@/lib/records/treatment/treatment.input';

/** A run as one row tells it: what its form takes, how long it lasted, and a reading at its beginning and end. */
export const bringTreatmentInput = startTreatmentInput.extend({
  minutes: optionalMinutesField,
  celsius: optionalCelsiusField(),
  ph: optionalPhField,
  endCelsius: optionalCelsiusField(),
  endPh: optionalPhField,
  place: optionalChoiceField(readingPlaces),
  /** Whether the row says no time of day. */
  timeAssumed: z.boolean(),
});

type Input = z.output<typeof bringTreatmentInput>;

const minute = 60_000;
/** A load without an end that went in before this is seldom still in. */
const surelyOutAfter = 2 * 24 * 60 * minute;

/** When the load came out: as the row says, else by how long it was in; a row that says both may not contradict itself. */
function endOf({ endedAt, minutes }: Input, start: Date, timeZone: string): Result<Date | null> {
  const said = endedAt === null ? null : momentInstant(endedAt, timeZone);
  if (minutes === null) return ok(said);
  if (said === null) return ok(new Date(start.getTime() + minutes * minute));
  const between = Math.round((said.getTime() - start.getTime()) / minute);
  return Math.abs(between - minutes) <= 1
    ? ok(said)
    : invalid('minutes', 'intake-other-length', { count: between });
}

type Judging = Pick<WriteContext, 'now' | 'confirmed'>;
type Lasted = { readonly start: Date; readonly end: Date | null };

/** When a run began and ended, once nothing stands against either. */
function lasted({ now, confirmed }: Judging, input: Input, timeZone: string): Result<Lasted> {
  const start = momentInstant(input.startedAt, timeZone);
  const end = endOf(input, start, timeZone);
  if (end.kind !== 'ok') return end;
  const readAtEnd = input.endCelsius !== null || input.endPh !== null;
  if (readAtEnd && end.value === null) return invalid('endedAt', 'missing');
  const questions: Question[] = [];
  if (input.timeAssumed) questions.push({ field: 'startedAt', code: 'intake-no-time' });
  if (end.value === null && now.getTime() - start.getTime() > surelyOutAfter)
    questions.push({ field: 'endedAt', code: 'intake-no-end' });
  const open = questions.filter(({ code }) => !confirmed.has(code));
  return open.length > 0 ? { kind: 'confirm', questions: open } : ok({ start, end: end.value });
}

const endNames: Readonly<Record<string, string>> = { celsius: 'endCelsius', ph: 'endPh', readAt: 'endedAt' };

/** What stands against the reading of the end names the fields of the end. */
function ofEnd(result: Result<ReadingColumns>): Result<ReadingColumns> {
  const renamed = <F extends { readonly field: string }>(one: F): F => ({
    ...one,
    field: endNames[one.field] ?? one.field,
  });
  if (result.kind === 'invalid') return { kind: 'invalid', errors: result.errors.map(renamed) };
  return result.kind === 'confirm' ? { kind: 'confirm', questions: result.questions.map(renamed) } : result;
}

/** The first and the last reading, as far as the row has them. */
function readingsOf(
  context: Judging,
  input: Input,
  { start, end }: Lasted,
  run: ReadRunOf,
): Result<readonly ReadingColumns[]> {
  const read = (at: Date, celsius: number | null, ph: number | null) =>
    celsius === null && ph === null
      ? undefined
      : judgeReading(
          context,
          // A temperature that names no place is the water's: only what was read in the load may count as the load's.
          { readAt: { kind: 'instant', at }, place: input.place ?? 'water', celsius, ph },
          run,
        );
  const first = read(start, input.celsius, input.ph);
  if (first && first.kind !== 'ok') return first;
  const last = read(end ?? start, input.endCelsius, input.endPh);
  const named = last && ofEnd(last);
  if (named && named.kind !== 'ok') return named;
  return ok([first, named].flatMap((one) => (one ? [one.value] : [])));
}

/** Records runs, each with what one row says of it, by the rules of their forms. */
export async function bringTreatments(
  context: WriteContext,
  asked: readonly OneOfMany<Input>[],
): Promise<Result<{ readonly id: string }>[]> {
  const { now } = context;
  const { sites } = await runLookups(
    context,
    asked.map(({ input }) => input),
  );
  const answers: Result<{ readonly id: string }>[] = [];
  const ready = asked.flatMap(({ input, confirmed }, at) => {
    const site = sites.get(input.siteId);
    const time = site ? lasted({ now, confirmed }, input, site.timeZone) : notFound;
    if (time.kind !== 'ok') {
      answers[at] = time;
      return [];
    }
    const { end } = time.value;
    return {
      at,
      input: { ...input, endedAt: end === null ? null : { kind: 'instant' as const, at: end } },
      readings: (run: ReadRunOf) => readingsOf({ now, confirmed }, input, time.value, run),
    };
  });
  const started = await startTreatments(context, ready);
  for (const [index, { at }] of ready.entries()) {
    const answer = started[index];
    if (answer) answers[at] = answer;
  }
  return answers;
}
