import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Question, type Result } from '@/lib/base/result';
import type { bringTreatmentInput } from '@/lib/intake/table/kinds/bring-treatment';
import { momentInstant } from '@/lib/records/fields/moment-instant';
import { addReading } from '@/lib/records/treatment/add-reading.command';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';

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

function unasked({ now, confirmed }: WriteContext, input: Input, start: Date, end: Date | null): Question[] {
  const questions: Question[] = [];
  if (input.timeAssumed) questions.push({ field: 'startedAt', code: 'intake-no-time' });
  if (end === null && now.getTime() - start.getTime() > surelyOutAfter)
    questions.push({ field: 'endedAt', code: 'intake-no-end' });
  return questions.filter(({ code }) => !confirmed.has(code));
}

type Reading = { readonly at: Date; readonly celsius: number | null; readonly ph: number | null };

const endNames: Readonly<Record<string, string>> = { celsius: 'endCelsius', ph: 'endPh', readAt: 'endedAt' };

/** Adds one reading; what stands against that of the end names the fields of the end. */
async function read(
  context: WriteContext,
  treatmentRunId: string,
  { at, celsius, ph }: Reading,
  place: Input['place'],
  ofEnd: boolean,
): Promise<Result<unknown>> {
  if (celsius === null && ph === null) return ok(null);
  const result = await addReading(context, {
    ...{ id: null, treatmentRunId, celsius, ph },
    readAt: { kind: 'instant', at },
    // A temperature that names no place is the water's: only what was read in the load may count as the load's.
    place: place ?? 'water',
  });
  if (!ofEnd) return result;
  const renamed = <F extends { readonly field: string }>(one: F): F => ({
    ...one,
    field: endNames[one.field] ?? one.field,
  });
  if (result.kind === 'invalid') return { kind: 'invalid', errors: result.errors.map(renamed) };
  return result.kind === 'confirm' ? { kind: 'confirm', questions: result.questions.map(renamed) } : result;
}

/** Records a run with what one row says of it, through the commands of its forms, one after the other. */
export async function bringTreatmentByForms(
  context: WriteContext,
  input: Input,
): Promise<Result<{ id: string }>> {
  const site = await context.db.site.findFirst({ where: { id: input.siteId, voidedAt: null } });
  if (!site) return notFound;
  const start = momentInstant(input.startedAt, site.timeZone);
  const end = endOf(input, start, site.timeZone);
  if (end.kind !== 'ok') return end;
  const readAtEnd = input.endCelsius !== null || input.endPh !== null;
  if (readAtEnd && end.value === null) return invalid('endedAt', 'missing');
  const questions = unasked(context, input, start, end.value);
  if (questions.length > 0) return { kind: 'confirm', questions };
  const started = await startTreatment(context, {
    ...input,
    endedAt: end.value === null ? null : { kind: 'instant', at: end.value },
  });
  if (started.kind !== 'ok') return started;
  const { id } = started.value;
  const first = { at: start, celsius: input.celsius, ph: input.ph };
  const begun = await read(context, id, first, input.place, false);
  if (begun.kind !== 'ok') return begun;
  const last = { at: end.value ?? start, celsius: input.endCelsius, ph: input.endPh };
  const ended = await read(context, id, last, input.place, true);
  return ended.kind === 'ok' ? ok({ id }) : ended;
}
