import { daysBetween } from '@/lib/growing/calendar-date';
import { signalsOf } from './signals-of';
import type { SiteCourse, SiteSignal } from './sites-answer';

/** Signals that begin within so many days of each other may have one cause. Our choice. */
const nearDays = 28;
/** From this share of the other sites on, what they have in common comes first. Our choice. */
const manyOthers = 0.5;
/** Members read this of their site: among fewer others the number would tell of single ones. Our choice. */
const fewestOthers = 5;

type WithCourse = { readonly siteId: string; readonly course: SiteCourse | null };

/** Of each site where its signals begin, with how many other sites began one of the same side within four weeks. */
export function siteSignals(sites: readonly WithCourse[]): ReadonlyMap<string, readonly SiteSignal[]> {
  const begun = sites.flatMap(({ siteId, course }) =>
    course === null
      ? []
      : [
          {
            siteId,
            begins: signalsOf(course.points).flatMap(({ batchId, on, signal }) =>
              signal === null ? [] : [{ batchId, on, side: signal }],
            ),
          },
        ],
  );
  type Begin = (typeof begun)[number]['begins'][number];
  const near = (one: Begin, other: Begin) =>
    one.side === other.side && Math.abs(daysBetween(one.on, other.on)) <= nearDays;
  return new Map(
    begun.map(({ siteId, begins }) => [
      siteId,
      begins.map((begin) => {
        const of = begun.length - 1;
        const others = begun.filter(
          (other) => other.siteId !== siteId && other.begins.some((own) => near(begin, own)),
        ).length;
        return { ...begin, others, of, shared: of >= fewestOthers && others >= manyOthers * of };
      }),
    ]),
  );
}
