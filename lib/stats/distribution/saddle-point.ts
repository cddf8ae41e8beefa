import { logGamma, stirlingSeries } from './log-gamma';

/*
 * Pieces of Loader's saddle-point expansion, which keeps binomial, Poisson, beta and gamma densities accurate for
 * large arguments where differences of log gammas lose digits.
 * Source: Loader (2000), "Fast and accurate computation of binomial probabilities" (citation from memory).
 */

const LOG_SQRT_TWO_PI = 0.9189385332046728;

/** log(n!) - log(sqrt(2 pi n) (n/e)^n) for real n > 0. */
export function stirlingError(n: number): number {
  if (n >= 9) return stirlingSeries(n);
  return logGamma(n + 1) - (n + 0.5) * Math.log(n) + n - LOG_SQRT_TWO_PI;
}

/** x log(x / mean) + mean - x >= 0 for x, mean > 0, without cancellation when x is near the mean. */
export function devianceTerm(x: number, mean: number): number {
  const v = (x - mean) / (x + mean);
  if (Math.abs(v) > 0.1) return x * Math.log(x / mean) + mean - x;
  const square = v * v;
  let power = 2 * x * v;
  let sum = (x - mean) * v;
  for (let odd = 3; ; odd += 2) {
    power *= square;
    const next = sum + power / odd;
    if (next === sum) return sum;
    sum = next;
  }
}
