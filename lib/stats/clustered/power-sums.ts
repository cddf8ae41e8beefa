import { elementAt } from '../element-at';

/** Longer stretches than this, from here on, are added up by the integral with its corrections. */
const LONG = 64;
const FAR = 4096;

/**
 * Adds `times` the sums over from <= j < to of ((j - middle) / middle)^k to `sums`, of k = 1 first.
 *
 * Long stretches far out are added up by the midpoint form of the Euler-Maclaurin formula, Abramowitz & Stegun (1964),
 * 23.1.30-31 (citation from memory): the integral from half before the first to half after the last, less 1/24 of the
 * difference of the first derivatives, with 7/5760 of the third. What is left out is below (k / middle)^6.
 */
export function addPowerSums(
  sums: Float64Array,
  times: number,
  from: number,
  to: number,
  middle: number,
): void {
  if (to - from <= LONG || from < FAR) {
    for (let j = from; j < to; j += 1) {
      const t = (j - middle) / middle;
      let power = times;
      for (let k = 0; k < sums.length; k += 1) {
        power *= t;
        sums[k] = (sums[k] ?? 0) + power;
      }
    }
    return;
  }
  const [first, last] = [(from - 0.5 - middle) / middle, (to - 0.5 - middle) / middle];
  const between = (power: number) => (power < 0 ? 0 : last ** power - first ** power);
  for (let k = 1; k <= sums.length; k += 1) {
    const integral = (middle * between(k + 1)) / (k + 1);
    const slopes = (k * between(k - 1)) / (24 * middle);
    const bends = (7 * k * (k - 1) * (k - 2) * between(k - 3)) / (5760 * middle ** 3);
    sums[k - 1] = elementAt(sums, k - 1) + times * (integral - slopes + bends);
  }
}
