import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import type { OpenBatch } from '@/lib/growing/open-batch';
import type { ShedSnapshot } from '@/lib/offline/shed-snapshot';
import { formatDate } from '../format/date-text';
import { fillPlaces } from './fill-places';
import type { QuickWords } from './quick-words';
import { dayAt, type TypedEntry, textAt } from './typed-entry';

/** A sentence about one field, as the summary of errors and the field itself show it. */
export type QuickProblem = { readonly field: string; readonly text: string };

/** What a quick form comes to before it is kept: not sayable yet, asked about, or ready. */
export type CheckedEntry =
  | { readonly kind: 'wrong'; readonly problems: readonly QuickProblem[] }
  | { readonly kind: 'ask'; readonly questions: readonly { readonly code: string; readonly text: string }[] }
  | {
      readonly kind: 'ready';
      readonly batch: OpenBatch;
      /** The batch as it stands once the entry counts, for the next entry on this page. */
      readonly after: OpenBatch;
      readonly entryKind: 'weighing' | 'finding' | 'check' | 'look';
      readonly input: Readonly<Record<string, unknown>>;
      /** What was written down, in one line. */
      readonly summary: string;
    };

/** What the checks of a quick entry read besides what was typed. */
export type CheckContext = {
  readonly batches: readonly OpenBatch[];
  readonly words: QuickWords;
  readonly person: ShedSnapshot['person'];
  readonly now: Date;
  /** Codes of the questions answered with yes. */
  readonly confirmed: readonly string[];
};

export type CheckEntry = (typed: TypedEntry, context: CheckContext) => CheckedEntry;

/** Codes of the catalogue's `quick.problem`. */
export type ProblemCode = keyof QuickWords['problem'];

/** The sentence of a problem, naming its field. */
export function problem(
  words: QuickWords,
  field: string,
  code: ProblemCode,
  values: Readonly<Record<string, string | number>> = {},
): QuickProblem {
  const { lines, ...fields } = words.fields;
  const labels: Readonly<Record<string, string>> = {
    ...fields,
    'lines.0.batchId': lines.batchId,
    'lines.0.flush': lines.flush,
  };
  return { field, text: fillPlaces(words.problem[code], { label: labels[field] ?? field, ...values }) };
}

/** The batch an entry names, and the day it is for; the server checks the same again. */
export function checkBatchAndDay(
  typed: TypedEntry,
  context: CheckContext,
  names: { readonly batch: string; readonly day: string },
): { batch: OpenBatch | undefined; day: string; problems: QuickProblem[] } {
  const { words, now } = context;
  const problems: QuickProblem[] = [];
  const batch = context.batches.find(({ id }) => id === textAt(typed, names.batch));
  if (batch === undefined) problems.push(problem(words, names.batch, 'missing-choice'));
  const day = dayAt(typed, names.day);
  if (day === undefined) problems.push(problem(words, names.day, 'not-a-date'));
  else if (day === '') problems.push(problem(words, names.day, 'missing'));
  else if (batch && day > todayInZone(batch.timeZone, now))
    problems.push(problem(words, names.day, 'future-date'));
  else if (batch && day < batch.inoculatedOn) {
    const date = formatDate(batch.inoculatedOn, words.form.locale);
    problems.push(problem(words, names.day, 'before-inoculation', { date }));
  }
  return { batch, day: day ?? '', problems };
}

/** A day within a sentence: today and yesterday by name. */
export function dayText(day: string, today: string, words: QuickWords): string {
  const { locale } = words.form;
  if (day === today) return words.days.today.toLocaleLowerCase(locale);
  if (day === addDays(today, -1)) return words.days.yesterday.toLocaleLowerCase(locale);
  return formatDate(day, locale);
}
