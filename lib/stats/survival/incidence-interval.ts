import { requireOpenProbability } from '../check-argument';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { survivalInterval } from './survival-interval';

/**
 * Limits of a cumulative incidence F: those of 1 - F on the log-log scale, `reach` being the standard
 * error times its normal or t quantile.
 * Before the first event of the cause see `noEventInterval`.
 */
export function incidenceInterval(
  incidence: number,
  { reach, level, watched }: { readonly reach: number; readonly level: number; readonly watched: number },
): Interval | CannotCompute {
  if (incidence === 0) return noEventInterval(watched, level);
  const rest = 1 - incidence;
  if (rest <= 0) return cannotCompute('no-variation', 'All units have had the event, so there is no spread.');
  const limits = survivalInterval(rest, { reach, level, transform: 'log-log' });
  if (limits.kind === 'cannot-compute') return limits;
  return {
    kind: 'interval',
    low: 1 - limits.high,
    high: 1 - limits.low,
    level,
    method: 'complementary log-log',
  };
}

/**
 * Limits where no event has been seen among `watched` independent units (for clusters: what their units are worth as
 * independent ones): 0 and 1 - ((1 - level) / 2)^(1 / watched), the exact binomial limit.
 */
export function noEventInterval(watched: number, level: number): Interval {
  requireOpenProbability('level', level);
  return {
    kind: 'interval',
    low: 0,
    high: watched > 0 ? 1 - ((1 - level) / 2) ** (1 / watched) : 1,
    level,
    method: 'exact limit for no event',
  };
}
