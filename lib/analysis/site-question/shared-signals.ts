import { daysBetween } from '@/lib/growing/calendar-date';
import { signalsOf } from './signals-of';
import type { CoursePoint, SharedSignal, SiteCourse } from './sites-answer';

/** Signals that begin within so many days of each other may have one cause. Our choice. */
const nearDays = 28;

type WithCourse = { readonly siteId: string; readonly course: SiteCourse | null };

/** Of each site the beginnings of its signals, with how many other sites began one of the same side within four weeks. */
export function sharedSignals(sites: readonly WithCourse[]): ReadonlyMap<string, readonly SharedSignal[]> {
  const begun = sites.flatMap(({ siteId, course }) =>
    course === null ? [] : [{ siteId, signals: signalsOf(course.points) }],
  );
  const near = (one: CoursePoint, other: CoursePoint) =>
    one.signal === other.signal && Math.abs(daysBetween(one.on, other.on)) <= nearDays;
  return new Map(
    begun.map(({ siteId, signals }) => [
      siteId,
      signals.map((signal) => ({
        on: signal.on,
        others: begun.filter(
          (other) => other.siteId !== siteId && other.signals.some((own) => near(signal, own)),
        ).length,
        of: begun.length - 1,
      })),
    ]),
  );
}
