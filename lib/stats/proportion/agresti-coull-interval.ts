import { requireEventsOfTrials, requireOpenProbability } from '../check-argument';
import { normalUpperQuantile } from '../distribution/normal';
import type { CannotCompute, Interval } from '../outcome';
import { NO_TRIALS } from './proportion-counts';

/**
 * The normal interval about (x + z^2/2) / (n + z^2). Not clipped: near 0 or 1 a limit can lie outside 0..1, which
 * is one reason why this is not the shipped interval. No units: a reason.
 *
 * Source: Agresti & Coull (1998), The American Statistician 52:119-126 (citation from memory).
 * @throws ArgumentError when x or n is no count, x > n, or the level is out of range.
 */
export function agrestiCoullInterval(x: number, n: number, level: number): Interval | CannotCompute {
  requireEventsOfTrials('x', x, 'n', n);
  requireOpenProbability('level', level);
  if (n === 0) return NO_TRIALS;
  const z = normalUpperQuantile((1 - level) / 2);
  const size = n + z * z;
  const centre = (x + (z * z) / 2) / size;
  const half = z * Math.sqrt((centre * (1 - centre)) / size);
  return { kind: 'interval', low: centre - half, high: centre + half, level, method: 'Agresti-Coull' };
}
