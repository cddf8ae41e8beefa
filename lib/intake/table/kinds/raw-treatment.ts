import { addDays } from '@/lib/growing/calendar-date';
import type { MomentCell } from '../read-moment-cell';
import type { RowValues } from '../read-row';

/** Where a row says a day and no time of day; a person is asked before it counts. */
const assumedTime = '12:00';

type Said = { readonly date: string | undefined; readonly time: string | undefined };

function momentOf(values: RowValues, name: string): MomentCell | undefined {
  return values.get(name) as MomentCell | undefined;
}

/** What a moment field would have posted. */
function posted({ date, time }: Said): unknown {
  return { quick: date ?? '', time: time ?? '' };
}

/** The end by the clock: a time before that of the start is one of the next day. */
function endOf(end: MomentCell | undefined, start: Said, hasLength: boolean): unknown {
  if (end === undefined || (end.time === undefined && hasLength)) return undefined;
  if (end.date !== undefined || end.time === undefined || start.date === undefined)
    return posted({ date: end.date ?? start.date, time: end.time });
  const overnight = start.time !== undefined && end.time < start.time;
  return posted({ date: overnight ? addDays(start.date, 1) : start.date, time: end.time });
}

/** What the form of a treatment would have posted, with its first and last reading. */
export function rawTreatment(values: RowValues, siteId: string | null): unknown {
  const { site, method, day: _, readingPlace, loadCelsius, ...rest } = Object.fromEntries(values);
  const [from, on] = [momentOf(values, 'startedAt'), momentOf(values, 'day')];
  const start: Said = { date: from?.date ?? on?.date, time: from?.time ?? on?.time };
  const timeAssumed = start.date !== undefined && start.time === undefined;
  return {
    ...rest,
    siteId: site ?? siteId,
    methodId: method,
    startedAt: posted(timeAssumed ? { ...start, time: assumedTime } : start),
    endedAt: endOf(momentOf(values, 'endedAt'), start, values.has('minutes')),
    place: readingPlace,
    loadCelsiusAtSpawning: loadCelsius,
    timeAssumed,
  };
}
