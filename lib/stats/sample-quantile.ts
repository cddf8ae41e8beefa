import { requireFinite, requireProbability } from './check-argument';
import { elementAt } from './element-at';
import { ArgumentError } from './outcome';

/**
 * Sample quantile by linear interpolation of the order statistics, h = (n - 1) p + 1: type 7 of Hyndman & Fan
 * (1996, The American Statistician 50, 361-365, from memory), R's default.
 *
 * @param values in any order; at least one. @param probability 0-1.
 */
export function sampleQuantile(values: readonly number[], probability: number): number {
  requireProbability('probability', probability);
  if (values.length === 0) throw new ArgumentError('values', 'must hold at least one number');
  values.forEach((value, index) => {
    requireFinite(`values[${index}]`, value);
  });
  const sorted = values.toSorted((one, other) => one - other);
  const place = (sorted.length - 1) * probability;
  // A product such as 0.9 * 10 may land a hair below a whole number.
  const below = Math.floor(place + 4 * Number.EPSILON * Math.max(1, place));
  const fraction = place - below;
  const low = elementAt(sorted, below);
  return fraction <= 0 ? low : low + fraction * (elementAt(sorted, below + 1) - low);
}
