import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { survivalInterval } from './survival-interval';

/**
 * Limits of a cumulative incidence F: those of 1 - F on the log-log scale. Before the first event of the cause they
 * are 0 and 1 - ((1 - level) / 2)^(1 / watched), the exact upper limit for no event among `watched` independent
 * units (or clusters, which takes units of a cluster as fully alike and so is on the safe side).
 */
export function incidenceInterval(
  incidence: number,
  standardError: number,
  {
    quantile,
    level,
    watched,
  }: { readonly quantile: number; readonly level: number; readonly watched: number },
): Interval | CannotCompute {
  if (incidence === 0) {
    return {
      kind: 'interval',
      low: 0,
      high: 1 - ((1 - level) / 2) ** (1 / watched),
      level,
      method: 'exact limit for no event',
    };
  }
  const rest = 1 - incidence;
  if (rest <= 0) return cannotCompute('no-variation', 'All units have had the event, so there is no spread.');
  const limits = survivalInterval(rest, standardError, { quantile, level, transform: 'log-log' });
  if (limits.kind === 'cannot-compute') return limits;
  return {
    kind: 'interval',
    low: 1 - limits.high,
    high: 1 - limits.low,
    level,
    method: 'complementary log-log',
  };
}
