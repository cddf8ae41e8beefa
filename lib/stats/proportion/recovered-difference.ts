import { ArgumentError, type Interval } from '../outcome';

/** A probability with its limits, 0-1. */
export type LimitedProportion = { readonly estimate: number; readonly low: number; readonly high: number };

/**
 * The difference of two proportions, first minus second, with limits recovered from those of each: with distances l and u
 * of the limits from each estimate and r the correlation of the two estimates,
 * low = d - sqrt(l1^2 - 2 r l1 u2 + u2^2), high = d + sqrt(u1^2 - 2 r u1 l2 + l2^2).
 * With r = 0 and Wilson's limits it is Newcombe's hybrid score interval. It serves adjusted probabilities, whose limits are
 * not symmetric and which share the error of everything they were adjusted for.
 *
 * Source: Zou & Donner (2008), Statistics in Medicine 27:1693-1702 (citation from memory).
 * @param correlation of the two estimates (on the scale their limits were made on), -1 to 1.
 * @throws ArgumentError for limits that do not hold their estimate, or a correlation out of range.
 */
export function recoveredDifference(
  first: LimitedProportion,
  second: LimitedProportion,
  correlation: number,
  level: number,
): { readonly estimate: number; readonly interval: Interval } {
  if (!(correlation >= -1 && correlation <= 1)) {
    throw new ArgumentError('correlation', `must be between -1 and 1, not ${correlation}`);
  }
  for (const [name, { estimate, low, high }] of [['first', first] as const, ['second', second] as const]) {
    if (!(low <= estimate && estimate <= high))
      throw new ArgumentError(name, 'must lie within its own limits');
  }
  const distance = (one: number, other: number) =>
    Math.sqrt(Math.max(0, one * one + other * other - 2 * correlation * one * other));
  const estimate = first.estimate - second.estimate;
  const low = distance(first.estimate - first.low, second.high - second.estimate);
  const high = distance(first.high - first.estimate, second.estimate - second.low);
  return {
    estimate,
    interval: {
      kind: 'interval',
      low: Math.max(-1, estimate - low),
      high: Math.min(1, estimate + high),
      level,
      method: 'limits recovered from both, correlated',
    },
  };
}
