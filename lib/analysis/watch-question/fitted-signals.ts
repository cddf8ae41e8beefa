import type { LotsAnswer } from '../lot-question/lots-answer';
import type { SitePart, SitesAnswer } from '../site-question/sites-answer';
import type { Signal } from './signal';
import type { SurprisesAnswer } from './surprises-answer';

/** What the fitted answers say that calls for a look. */
export type WatchAnswers = {
  readonly lots: LotsAnswer;
  readonly sites: SitesAnswer;
  readonly surprises: SurprisesAnswer;
};

/** The signals of the fitted answers, of whatever age. */
export function fittedSignals({ lots, sites, surprises }: WatchAnswers): Signal[] {
  const bad = lots.kind === 'judged' ? lots.lots.filter(({ verdict }) => verdict === 'loses-more') : [];
  return [
    ...bad.flatMap(({ lotId, observed, expected, units }): Signal[] => {
      const since = surprises.lotLast[lotId];
      return since === undefined
        ? []
        : [{ kind: 'lot', key: `lot:${lotId}`, since, lotId, observed, expected, units }];
    }),
    ...sites.sites.flatMap(courseSignal),
    ...surprises.losses.map(
      ({ on, ...found }): Signal => ({ kind: 'loss', key: `loss:${found.batchId}`, since: on, ...found }),
    ),
    ...surprises.yields.map(
      ({ on, ...found }): Signal => ({ kind: 'yield', key: `yield:${found.batchId}`, since: on, ...found }),
    ),
  ];
}

/** The last time a site's course left its limits; points after the first that still signal the same way belong to it. */
function courseSignal({ siteId, course }: SitePart): Signal[] {
  const points = course?.points ?? [];
  const first = points.findLast(({ signal }, at) => signal !== null && points[at - 1]?.signal !== signal);
  if (course == null || first === undefined || first.signal === null) return [];
  return [
    {
      kind: 'course',
      key: `course:${siteId}:${first.signal}:${first.batchId}`,
      since: first.on,
      siteId,
      side: first.signal,
      average: first.value,
      usual: course.centrePercent,
    },
  ];
}
