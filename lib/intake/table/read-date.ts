import type { DateOrder } from '@/lib/growing/condition-table-layout';
import { type DateParts, dateInOrder, dateParts, onlyOrder } from '../conditions/read-moment';
import { plainWords } from './plain-words';

const months = [
  ['jan', 'ene'],
  ['feb'],
  ['mar'],
  ['apr', 'abr'],
  ['may'],
  ['jun'],
  ['jul'],
  ['aug', 'ago'],
  ['sep', 'set'],
  ['oct'],
  ['nov'],
  ['dec', 'dic'],
] as const;

const clockAfter = /^\d{1,2}:\d{2}/;

/** A date whose month is written as a word, such as "3 Mar 2026" or "3 de marzo de 2026". */
function wordedDate(text: string): string | undefined {
  const parts = plainWords(text)
    .split(' ')
    .filter((part) => part !== '' && part !== 'de' && part !== 'del');
  if (parts.length !== 3) return undefined;
  const at = parts.findIndex((part) => /^\p{L}+$/u.test(part));
  const month = months.findIndex((starts) => starts.some((start) => parts[at]?.startsWith(start)));
  const [first = '', second = ''] = parts.filter((_, index) => index !== at);
  if (month < 0 || !/^\d{1,4}(st|nd|rd|th)?$/.test(first) || !/^\d{1,4}$/.test(second)) return undefined;
  const [day, year] = first.length === 4 ? [second, first] : [first, second];
  return dateInOrder([Number.parseInt(day, 10), month + 1, Number(year)], 'dmy');
}

/** The date of a cell as YYYY-MM-DD, a time of day after it left out; undefined where none can be read. */
export function readDate(text: string, order: DateOrder): string | undefined {
  const found = dateParts(text);
  if (!found) return wordedDate(text);
  if (found.rest !== '' && !clockAfter.test(found.rest)) return undefined;
  const [first] = found.parts;
  // A year of four digits at the front is a year whatever the order.
  return dateInOrder(found.parts, first > 31 ? 'ymd' : order);
}

/**
 * The order in which the dates of a table are written: what a date itself says goes first; of several that read, the
 * order of the reader's region.
 */
export function guessDateOrder(cells: readonly string[], usual: DateOrder): DateOrder {
  const dates: readonly DateParts[] = cells.flatMap((cell) => dateParts(cell) ?? []);
  const told = new Map<DateOrder, number>();
  for (const date of dates) {
    const order = onlyOrder(date);
    if (order !== undefined) told.set(order, (told.get(order) ?? 0) + 1);
  }
  const [most] = [...told].sort(([, a], [, b]) => b - a);
  if (most) return most[0];
  return dates.length > 0 && dates.every(({ parts: [first] }) => first > 31) ? 'ymd' : usual;
}
