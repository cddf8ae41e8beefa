import type { CoursePoint, SitesAnswer } from './sites-answer';

/** Points at which a signal begins, each with the one before, without which nobody could tell that it begins there. */
function pointsOfSignals(points: readonly CoursePoint[]): CoursePoint[] {
  const begins = (at: number) => {
    const signal = points[at]?.signal ?? null;
    return signal !== null && points[at - 1]?.signal !== signal;
  };
  return points.filter((_, at) => begins(at) || begins(at + 1));
}

/**
 * What is stored of the answer about every site: of courses only where signals begin, which is all that the list of sites
 * and the watch list say of them. Whole courses are stored with each site's own part; of a thousand sites they are
 * twenty megabytes.
 */
export function keptSites({ sites, funnel }: SitesAnswer): SitesAnswer {
  return {
    funnel,
    sites: sites.map((site) =>
      site.course === null
        ? site
        : { ...site, course: { ...site.course, points: pointsOfSignals(site.course.points) } },
    ),
  };
}
