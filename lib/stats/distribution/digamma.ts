import { requirePositive } from '../check-argument';

/*
 * Derivatives of log gamma for x > 0. The recurrence carries x to 12 or more, where the asymptotic series of
 * Abramowitz & Stegun (1964), 6.3.18 and 6.4.12, reach double precision.
 */

const SERIES_FROM = 12;

/**
 * psi(x), the first derivative of log gamma. Near its zero at 1.4616 the absolute error stays near 1e-15.
 * @throws ArgumentError unless x is finite and above 0.
 */
export function digamma(x: number): number {
  requirePositive('x', x);
  let shifted = x;
  let sum = 0;
  while (shifted < SERIES_FROM) {
    sum -= 1 / shifted;
    shifted += 1;
  }
  const w = 1 / (shifted * shifted);
  const bernoulli =
    w * (1 / 12 - w * (1 / 120 - w * (1 / 252 - w * (1 / 240 - w * (1 / 132 - w * (691 / 32760 - w / 12))))));
  return sum + Math.log(shifted) - 0.5 / shifted - bernoulli;
}

/**
 * psi'(x), the second derivative of log gamma.
 * @throws ArgumentError unless x is finite and above 0.
 */
export function trigamma(x: number): number {
  requirePositive('x', x);
  let shifted = x;
  let sum = 0;
  while (shifted < SERIES_FROM) {
    sum += 1 / (shifted * shifted);
    shifted += 1;
  }
  const w = 1 / (shifted * shifted);
  const bernoulli =
    1 / 6 - w * (1 / 30 - w * (1 / 42 - w * (1 / 30 - w * (5 / 66 - w * (691 / 2730 - (w * 7) / 6)))));
  return sum + (1 + (0.5 + bernoulli / shifted) / shifted) / shifted;
}
