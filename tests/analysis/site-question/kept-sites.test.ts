import { describe, expect, it } from 'vitest';
import { keptSites } from '@/lib/analysis/site-question/kept-sites';
import { signalsOf } from '@/lib/analysis/site-question/signals-of';
import type { CoursePoint, SitePart } from '@/lib/analysis/site-question/sites-answer';
import { fittedSignals } from '@/lib/analysis/watch-question/fitted-signals';

const sides = [null, 'above', 'below'] as const;
const longest = 7;

/** A course in which each digit of a number of base 3 is a point. */
function courseOf(number: number): CoursePoint[] {
  return Array.from({ length: longest }, (_, at) => ({
    ...{
      batchId: `batch ${at}`,
      on: `2026-07-0${at + 1}`,
      events: 1,
      units: 20,
      value: 12,
      low: 2,
      high: 10,
    },
    signal: sides[Math.floor(number / 3 ** at) % 3] ?? null,
  }));
}

const siteOf = (points: readonly CoursePoint[]) =>
  ({
    siteId: 'mill',
    course: { centrePercent: 5, points, falseAlarmEvery: 400, correlation: 0.1 },
  }) as unknown as SitePart;

const answerOf = (points: readonly CoursePoint[]) => ({ sites: [siteOf(points)], funnel: null });
const keptOf = (points: readonly CoursePoint[]) => keptSites(answerOf(points)).sites[0]?.course?.points ?? [];
const every = Array.from({ length: 3 ** longest }, (_, number) => courseOf(number));

describe('what is stored of the answer about every site', () => {
  it('tells the same signals as the whole courses, whatever points they have', () => {
    for (const points of every) expect(signalsOf(keptOf(points))).toEqual(signalsOf(points));
  });

  it('lists the same last signal of a site on the watch list', () => {
    const lots = { kind: 'cannot', reason: 'too-few-lots' } as const;
    const surprises = { losses: [], yields: [], lotLast: {} };
    const listed = (sites: ReturnType<typeof answerOf>) =>
      fittedSignals({ lots, surprises, sites: keptSites(sites) });
    for (const points of every)
      expect(listed(answerOf(points))).toEqual(fittedSignals({ lots, surprises, sites: answerOf(points) }));
  });

  it('leaves out every point of a course that is in order', () => {
    expect(keptOf(courseOf(0))).toEqual([]);
  });

  it('keeps a site without a course as it is', () => {
    const bare = { ...siteOf([]), course: null };
    expect(keptSites({ sites: [bare], funnel: null }).sites).toEqual([bare]);
  });
});
