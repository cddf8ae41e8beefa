import { requireFinite, requireOpenProbability, requirePositive } from '../check-argument';
import { ArgumentError, type CannotCompute, cannotCompute } from '../outcome';
import type { EwmaChart, EwmaPoint } from './ewma-proportion';

/** Mean range of two normal values over their standard deviation: 2 / sqrt(pi). */
const rangeOfTwo = 2 / Math.sqrt(Math.PI);

/**
 * Exponentially weighted moving average of single values in the order given: z = lambda x + (1 - lambda) z from z = centre,
 * with limits centre -+ width sigma sqrt(lambda / (2 - lambda) (1 - (1 - lambda)^(2 i))) at the i-th value, a signal outside.
 *
 * Source: Roberts (1959, Technometrics 1, 239-250); limits as in Montgomery (Introduction to Statistical Quality Control,
 * ch. 9), from memory.
 *
 * @param centre,sigma mean and standard deviation of a value while nothing changes. @param weight lambda, 0 < lambda < 1.
 * @throws ArgumentError for values that are not finite or parameters out of range.
 */
export function ewmaMean(
  values: readonly number[],
  given: {
    readonly centre: number;
    readonly sigma: number;
    readonly weight: number;
    readonly width: number;
  },
): EwmaChart {
  const { centre, sigma, weight, width } = given;
  requireFinite('centre', centre);
  requirePositive('sigma', sigma);
  requireOpenProbability('weight', weight);
  requirePositive('width', width);
  let value = centre;
  const points = values.map((x, index): EwmaPoint => {
    requireFinite(`values[${index}]`, x);
    value = weight * x + (1 - weight) * value;
    const standardError =
      sigma * Math.sqrt((weight / (2 - weight)) * (1 - (1 - weight) ** (2 * (index + 1))));
    const [low, high] = [centre - width * standardError, centre + width * standardError];
    return { value, standardError, low, high, signal: value < low || value > high };
  });
  return { kind: 'ewma', points, method: 'EWMA of values' };
}

/**
 * Standard deviation of single values from the mean range of neighbours over 2 / sqrt(pi), which a slow drift or one step hardly
 * widens, unlike the standard deviation over all values.
 *
 * @returns the estimate; `too-few-observations` below two values, `no-variation` when neighbours never differ.
 */
export function movingRangeDeviation(values: readonly number[]): number | CannotCompute {
  if (values.some((value) => !Number.isFinite(value))) throw new ArgumentError('values', 'must be finite');
  if (values.length < 2) {
    return cannotCompute('too-few-observations', 'The spread of values needs at least two of them.');
  }
  const ranges = values.slice(1).map((value, index) => Math.abs(value - (values[index] ?? value)));
  const mean = ranges.reduce((sum, range) => sum + range, 0) / ranges.length;
  return mean > 0
    ? mean / rangeOfTwo
    : cannotCompute('no-variation', 'All values are the same, so no spread was seen.');
}
