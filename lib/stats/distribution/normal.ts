import { requireProbability } from '../check-argument';
import { requireNumber } from './argument';
import { scaledComplementaryError } from './scaled-complementary-error';

/*
 * The standard normal distribution: mean 0, standard deviation 1. Arguments are in standard deviations.
 * Infinite arguments are allowed; NaN throws ArgumentError.
 */

const LOG_SQRT_TWO_PI = 0.9189385332046728;
const INVERSE_SQRT_TWO_PI = 0.3989422804014327;

/** Density exp(-x^2 / 2) / sqrt(2 pi). */
export function normalDensity(x: number): number {
  requireNumber('x', x);
  return INVERSE_SQRT_TWO_PI * gaussian(x);
}

/** P(X <= x); relative error near 1e-15 down to the smallest normal double. */
export function normalCdf(x: number): number {
  requireNumber('x', x);
  return x > 0 ? 1 - upperTail(x) : upperTail(-x);
}

/** P(X > x). */
export function normalSurvival(x: number): number {
  requireNumber('x', x);
  return x > 0 ? upperTail(x) : 1 - upperTail(-x);
}

/** log P(X <= x), accurate where the probability itself has underflowed. */
export function logNormalCdf(x: number): number {
  requireNumber('x', x);
  return x > 0 ? Math.log1p(-upperTail(x)) : logUpperTail(-x);
}

/** log P(X > x). */
export function logNormalSurvival(x: number): number {
  return logNormalCdf(-x);
}

/**
 * The x with P(X <= x) = p; -Infinity and Infinity at p = 0 and 1.
 * @throws ArgumentError unless 0 <= p <= 1.
 */
export function normalQuantile(p: number): number {
  requireProbability('p', p);
  if (p === 0) return Number.NEGATIVE_INFINITY;
  if (p === 1) return Number.POSITIVE_INFINITY;
  if (Math.abs(p - 0.5) <= 0.25) return centralQuantile(p - 0.5);
  return p < 0.5 ? -tailQuantile(p) : tailQuantile(1 - p);
}

/** The x with P(X > x) = p, accurate for p far smaller than 1e-16. */
export function normalUpperQuantile(p: number): number {
  return 0 - normalQuantile(p);
}

/** exp(-x^2 / 2) with x split so that rounding in x^2 does not reach the tail. */
function gaussian(x: number): number {
  if (Math.abs(x) > 40) return 0;
  const head = Math.trunc(x * 16) / 16;
  return Math.exp((-head * head) / 2) * Math.exp((-(x - head) * (x + head)) / 2);
}

function upperTail(x: number): number {
  if (x === 0) return 0.5;
  return 0.5 * gaussian(x) * scaledComplementaryError(x * Math.SQRT1_2);
}

function logUpperTail(x: number): number {
  if (x === Number.POSITIVE_INFINITY) return Number.NEGATIVE_INFINITY;
  return (-x * x) / 2 + Math.log(0.5 * scaledComplementaryError(x * Math.SQRT1_2));
}

/** Newton's method on P(0 < X <= x) = share, by the series density * (x + x^3/3 + x^5/15 + ...). */
function centralQuantile(share: number): number {
  let x = share / INVERSE_SQRT_TWO_PI;
  for (let step = 0; step < 8; step += 1) {
    let term = x;
    let sum = x;
    for (let odd = 3; Math.abs(term) > 1e-17 * Math.abs(sum); odd += 2) {
      term *= (x * x) / odd;
      sum += term;
    }
    const change = sum - share / (INVERSE_SQRT_TWO_PI * gaussian(x));
    x -= change;
    if (Math.abs(change) <= 1e-16 * Math.abs(x)) break;
  }
  return x;
}

/** Newton's method on the logarithm of the tail, which is concave, from a first guess good to 5e-4. */
function tailQuantile(p: number): number {
  const logP = Math.log(p);
  const t = Math.sqrt(-2 * logP);
  // Abramowitz & Stegun (1964) 26.2.23.
  let x =
    t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
  for (let step = 0; step < 8; step += 1) {
    const scaled = 0.5 * scaledComplementaryError(x * Math.SQRT1_2);
    const excess = (-x * x) / 2 + Math.log(scaled) - logP;
    const change = excess * scaled * Math.exp(LOG_SQRT_TWO_PI);
    x += change;
    if (Math.abs(change) <= 1e-15 * x) break;
  }
  return x;
}
