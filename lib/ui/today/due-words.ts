import { daysBetween } from '@/lib/growing/calendar-date';
import { minutesBetween } from '@/lib/growing/treatment-reading';
import type { BatchLine, DueLine, RunLine } from '@/lib/records/today/due-line';
import { dateSpan } from '../format/date-span';
import { formatDuration } from '../format/duration-text';
import { formatTemperature } from '../format/temperature-text';
import { dueAddress } from './due-address';
import { dayOrTime, type Reader } from './reader';

/** A line in words; `left` tells the time from now and is stale as soon as it stands still. */
export type DueText = {
  /** What to do. */
  readonly text: string;
  readonly place: string;
  /** Why, with days and times of day. */
  readonly why: string;
  /** "in 35 min", "3 days late"; empty where the days in `why` say it all. */
  readonly left: string;
  readonly href: string;
};

function runText(line: RunLine, reader: Reader): { values: Record<string, string | number>; left: string } {
  const { words, locale, temperatureUnit, now } = reader;
  const { due } = line;
  const clock = (instant: Date) => dayOrTime(instant, line, locale);
  const warmth = (celsius: number) => formatTemperature(celsius, temperatureUnit, locale);
  const until = (instant: Date) => {
    const minutes = minutesBetween(now, instant);
    const length = formatDuration(Math.abs(minutes), locale);
    return words(minutes >= 0 ? 'today.left.in' : 'today.left.ago', { length });
  };
  switch (due.kind) {
    case 'lime-soaking':
    case 'lime-lift':
    case 'lime-late':
      return {
        values: { from: clock(due.from), by: clock(due.by) },
        left: due.kind === 'lime-lift' ? '' : until(due.at),
      };
    case 'ferment-under':
    case 'ferment-ready':
    case 'ferment-late':
      return {
        values: {
          day: due.day,
          least: due.minDays,
          most: due.maxDays,
          from: clock(due.from),
          by: clock(due.by),
        },
        left: due.kind === 'ferment-ready' ? '' : until(due.at),
      };
    case 'heat-unread':
      return { values: { length: formatDuration(due.minutes, locale) }, left: '' };
    case 'heat-warming':
    case 'heat-below':
    case 'heat-above':
      return {
        values: { celsius: warmth(due.celsius), limit: warmth(due.limitCelsius), at: clock(due.at) },
        left: '',
      };
    case 'heat-holding':
    case 'heat-confirm':
    case 'heat-held':
      return {
        values: { minutes: due.minutes, least: due.minMinutes, done: clock(due.doneAt) },
        left: due.kind === 'heat-holding' ? until(due.doneAt) : '',
      };
    case 'unfinished':
      return { values: { at: clock(due.at) }, left: '' };
    case 'load-cooling':
    case 'load-waiting':
      return {
        values: {
          at: clock(due.outAt),
          read: due.celsius === null ? 'no' : 'yes',
          celsius: due.celsius === null ? '' : warmth(due.celsius),
          heated: due.limitCelsius === null ? 'no' : 'yes',
          limit: due.limitCelsius === null ? '' : warmth(due.limitCelsius),
        },
        left: '',
      };
  }
}

function batchText(line: BatchLine, reader: Reader): { why: string; left: string } {
  const { words, locale, language } = reader;
  const { due, today, urgency } = line;
  const facts = words('today.batchOf', {
    species: language === 'es' ? line.speciesEs : line.speciesEn,
    container: words(`vocabulary.containerKind.${line.container}`).toLocaleLowerCase(locale),
    day: line.dayNumber,
  });
  const entered = dateSpan(line.enteredOn, line.enteredOn, locale, today).from;
  const ranges = { ...dateSpan(due.from, due.to, locale, today), entered };
  const parts = [facts, words(`today.why.${due.kind}`, ranges)];
  if (due.own !== null) {
    const { batches, from, to } = due.own;
    parts.push(words('today.own', { batches, from, to, span: from === to ? 'one' : 'several' }));
  }
  const late = daysBetween(due.to, today);
  const left =
    urgency === 'overdue'
      ? words('today.left.late', { days: late })
      : urgency === 'soon'
        ? words('today.left.days', { days: daysBetween(today, due.from) })
        : '';
  return { why: parts.join(' · '), left };
}

/** A line of what is due in the reader's words, for the page and for a phone that keeps it. */
export function dueWords(line: DueLine, reader: Reader): DueText {
  const { words } = reader;
  const { code, siteName: place } = line;
  const href = dueAddress(line);
  if (line.of === 'batch')
    return { text: words(`today.due.${line.due.kind}`, { code }), place, href, ...batchText(line, reader) };
  const { values, left } = runText(line, reader);
  const method = words(`vocabulary.methodKind.${line.method}`);
  return {
    text: words(`today.due.${line.due.kind}`, { code, ...values }),
    place,
    href,
    why: [method, words(`today.why.${line.due.kind}`, values)].join(' · '),
    left,
  };
}
