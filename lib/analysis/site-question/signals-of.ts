import type { CoursePoint } from './sites-answer';

/** Where signals begin: points after one that still signal the same way belong to it. */
export function signalsOf(points: readonly CoursePoint[]): CoursePoint[] {
  return points.filter(({ signal }, index) => signal !== null && points[index - 1]?.signal !== signal);
}
