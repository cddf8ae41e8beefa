import type { DateOrder } from '@/lib/growing/condition-table-layout';
import { dateInOrder, dateParts } from '../conditions/read-moment';
import { readDate } from './read-date';

/** What a cell says of a moment: a day, a time of day ('HH:MM', by the clock of the site) or both. */
export type MomentCell = { readonly date?: string; readonly time?: string };

const clock = /^(\d{1,2})(?:[:.h](\d{2}))?(?::\d{2}(?:[.,]\d+)?)?\s*(?:([ap])\.?\s?m\.?|h|hrs?)?$/i;

function readTime(text: string): string | undefined {
  const [, hour, minute, half] = clock.exec(text.trim()) ?? [];
  // A bare number is no time of day; "8 am" and "8h" are.
  if (hour === undefined || (minute === undefined && /^\d+$/.test(text.trim()))) return undefined;
  const whole = half === undefined ? Number(hour) : (Number(hour) % 12) + (/p/i.test(half) ? 12 : 0);
  if (whole > 23 || Number(minute ?? 0) > 59) return undefined;
  return `${String(whole).padStart(2, '0')}:${minute ?? '00'}`;
}

/** A workbook keeps a time of day alone as a part of a day, or as that time of a day before its calendar begins. */
function workbookTime(text: string): string | undefined {
  const dated = /^1(?:899|900)-\d{2}-\d{2} (\d{2}:\d{2})$/.exec(text)?.[1];
  if (dated !== undefined) return dated;
  if (!/^0\.\d+$/.test(text)) return undefined;
  const minutes = Math.round(Number(text) * 24 * 60) % (24 * 60);
  const two = (part: number) => String(part).padStart(2, '0');
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}

/** Reads a day, a time of day or both from one cell; undefined where neither can be read. */
export function readMomentCell(text: string, order: DateOrder, inWorkbook: boolean): MomentCell | undefined {
  // In a text, 0.30 is half past midnight; only a workbook keeps a time as a part of a day.
  const alone = (inWorkbook ? workbookTime(text) : undefined) ?? readTime(text);
  if (alone !== undefined) return { time: alone };
  const found = dateParts(text);
  if (found === undefined || found.rest === '') {
    const date = readDate(text, order);
    return date === undefined ? undefined : { date };
  }
  const date = dateInOrder(found.parts, found.parts[0] > 31 ? 'ymd' : order);
  const time = readTime(found.rest);
  return date === undefined || time === undefined ? undefined : { date, time };
}
