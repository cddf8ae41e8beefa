import { requireCount, requireOpenProbability, requireProbability } from '../check-argument';
import { ArgumentError } from '../outcome';

/** All densities are held at once; no batch or site comes near this size. */
const MOST_UNITS = 1_000_000;

/**
 * P(X = k), k = 0 .. n, for `n` units of one cluster that are events with mean probability `mean` and correlate by
 * `correlation` within it: beta-binomial with a = mean (1 - rho) / rho, b = (1 - mean)(1 - rho) / rho. Correlation 0
 * is the binomial.
 *
 * Built from ratios of neighbouring terms on the log scale: P(k+1) / P(k) =
 * (n - k)(mean (1 - rho) + k rho) / ((k + 1)((1 - mean)(1 - rho) + (n - k - 1) rho)).
 * Source: Skellam (1948, J R Stat Soc B 10, 257-261, from memory).
 *
 * @param mean 0-1. @param correlation 0 up to, not including, 1.
 */
export function betaBinomialDensities(n: number, mean: number, correlation: number): number[] {
  requireCount('n', n);
  if (n > MOST_UNITS) throw new ArgumentError('n', `must be at most ${MOST_UNITS}, not ${n}`);
  requireProbability('mean', mean);
  if (correlation !== 0) requireOpenProbability('correlation', correlation);
  if (mean === 0 || mean === 1) {
    return Array.from({ length: n + 1 }, (_, k) => (k === n * mean ? 1 : 0));
  }
  const keep = 1 - correlation;
  let log = 0;
  for (let unit = 0; unit < n; unit += 1) {
    log += Math.log(((1 - mean) * keep + unit * correlation) / (keep + unit * correlation));
  }
  const densities: number[] = [Math.exp(log)];
  for (let k = 0; k < n; k += 1) {
    log += Math.log(
      ((n - k) * (mean * keep + k * correlation)) /
        ((k + 1) * ((1 - mean) * keep + (n - k - 1) * correlation)),
    );
    densities.push(Math.exp(log));
  }
  return densities;
}
