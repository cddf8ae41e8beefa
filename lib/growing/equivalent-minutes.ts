import { type Answer, answer, cannotCompute } from './answer';
import type { CoursePoint } from './temperature-course';

/** The stated assumptions of the comparison aid: reference temperature and z, degrees Celsius. */
export const equivalentAssumptions = { referenceCelsius: 60, zCelsius: 10 } as const;

type Assumptions = { readonly referenceCelsius: number; readonly zCelsius: number };

/**
 * Minutes at the reference temperature that equal `minutes` at `celsius`: minutes x 10^((T - Tref) / z). The general
 * food-engineering form (common practice); no pasteurisation unit for mushroom straw is published, so this is a
 * comparison aid only. 30 min at 70 C equal 300 min at 60 C with z = 10.
 */
export function equivalentMinutes(
  celsius: number,
  minutes: number,
  { referenceCelsius, zCelsius }: Assumptions = equivalentAssumptions,
): number {
  return minutes * 10 ** ((celsius - referenceCelsius) / zCelsius);
}

/**
 * Equivalent minutes of a whole run, its temperature a straight line between readings (exact integral).
 * `points` in order of time; at least two.
 */
export function equivalentMinutesOfCourse(
  points: readonly CoursePoint[],
  assumptions: Assumptions = equivalentAssumptions,
): Answer<number> {
  if (points.length < 2) return cannotCompute('not-enough-readings', { readings: points.length });
  let total = 0;
  for (const [index, end] of points.entries()) {
    const start = points[index - 1];
    if (!start) continue;
    const minutes = end.minute - start.minute;
    if (minutes < 0) return cannotCompute('end-before-start', { minutes });
    const from = equivalentMinutes(start.celsius, 1, assumptions);
    const to = equivalentMinutes(end.celsius, 1, assumptions);
    // The mean of an exponential between two values; equal ends are the limit of that expression.
    total += minutes * (Math.abs(to - from) < 1e-9 * to ? to : (to - from) / Math.log(to / from));
  }
  return answer(total);
}

/** z in degrees Celsius from two decimal reduction times: (T2 - T1) / log10(D1 / D2). */
export function zFromReductionTimes(
  coolCelsius: number,
  coolMinutes: number,
  hotCelsius: number,
  hotMinutes: number,
): Answer<number> {
  const z = (hotCelsius - coolCelsius) / Math.log10(coolMinutes / hotMinutes);
  return Number.isFinite(z) && z > 0
    ? answer(z)
    : cannotCompute('out-of-range', { argument: 'z', given: String(z) });
}
