import type { DriftPoint } from '@/lib/analysis/treatment-question/treatments-answer';

/** Where the latest signal of a course began; undefined while it is steady. */
export function lastSignal(points: readonly DriftPoint[]): DriftPoint | undefined {
  if (points.at(-1)?.signal === null) return undefined;
  return points.findLast(
    (point, index) => point.signal !== null && points[index - 1]?.signal !== point.signal,
  );
}
