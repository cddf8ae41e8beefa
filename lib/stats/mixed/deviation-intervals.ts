import { MANY_ROWS } from './costly-tail';
import { curvatureLimits } from './curvature-limits';
import type { DeviationInterval } from './variance-interval';

/** A standard deviation, a random term's or the residual's (`term` undefined); its standard error where it has one. */
export type EstimatedDeviation = {
  readonly term: string | undefined;
  readonly estimate: number;
  readonly standardError: number | undefined;
  readonly levels: number;
};

/**
 * Intervals of the standard deviations of a mixed model, in their order: from their profiles, or with many rows from the
 * curvature of the likelihood at the estimate wherever that gives the same limits.
 *
 * @param rows that the model is fitted to. @param level two-sided confidence, above 0 and below 1.
 * @param profile follows the profiles of the deviations at these places.
 */
export function deviationIntervals(
  deviations: readonly EstimatedDeviation[],
  rows: number,
  level: number,
  profile: (places: readonly number[]) => readonly DeviationInterval[],
): DeviationInterval[] {
  const curved = deviations.map(
    ({ term, estimate, standardError, levels }): DeviationInterval | undefined => {
      if (rows <= MANY_ROWS || standardError === undefined) return undefined;
      const limits = curvatureLimits({ estimate, standardError, levels }, level);
      return (
        limits && { term, interval: { kind: 'interval', ...limits, level, method: 'likelihood curvature' } }
      );
    },
  );
  const places = deviations.map((_, place) => place);
  const followed = profile(places.filter((place) => curved[place] === undefined)).values();
  return curved.flatMap((interval) => {
    if (interval !== undefined) return [interval];
    const { value } = followed.next();
    return value === undefined ? [] : [value];
  });
}
