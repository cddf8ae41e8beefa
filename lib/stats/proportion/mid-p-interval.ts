import { requireEventsOfTrials, requireOpenProbability } from '../check-argument';
import { proportion } from '../distribution/beta-log-odds';
import { binomialCdf, binomialDensity, binomialSurvival } from '../distribution/binomial';
import { findRoot } from '../find-root';
import type { CannotCompute, Interval } from '../outcome';
import { NO_TRIALS } from './proportion-counts';

/** Log-odds beyond every limit that a double can hold apart from 0 and 1. */
const FURTHEST = 700;

/**
 * The mid-P exact interval: as Clopper-Pearson, but counting half the probability of the observed number, so that
 * it covers its level on average rather than at least. Exactly 0 at no events and 1 at all events. No units: a
 * reason.
 *
 * Source: Newcombe (1998), Statistics in Medicine 17:857-872, method 6 (method number from memory).
 * @throws ArgumentError when x or n is no count, x > n, or the level is out of range.
 */
export function midPInterval(x: number, n: number, level: number): Interval | CannotCompute {
  requireEventsOfTrials('x', x, 'n', n);
  requireOpenProbability('level', level);
  if (n === 0) return NO_TRIALS;
  return {
    kind: 'interval',
    low: x === 0 ? 0 : lowLimit(x, n, level),
    high: x === n ? 1 : highLimit(x, n, level),
    level,
    method: 'mid-P exact',
  };
}

function lowLimit(x: number, n: number, level: number): number {
  const excess = (u: number) => {
    const p = proportion(u);
    return binomialSurvival(x, n, p) + binomialDensity(x, n, p) / 2 - (1 - level) / 2;
  };
  return proportion(findRoot(excess, -FURTHEST, FURTHEST));
}

function highLimit(x: number, n: number, level: number): number {
  const excess = (u: number) => {
    const p = proportion(u);
    return binomialCdf(x - 1, n, p) + binomialDensity(x, n, p) / 2 - (1 - level) / 2;
  };
  return proportion(findRoot(excess, -FURTHEST, FURTHEST));
}
