import { logGamma } from './log-gamma';
import { devianceTerm, stirlingError } from './saddle-point';
import { ALL_ABOVE, ALL_BELOW, type Tails, tailsFromLogLower, tailsFromLogUpper } from './tails';

const LOG_TWO_PI = 1.8378770664093456;

/**
 * log(x^a exp(-x) / gamma(a)) for a > 0, 0 < x < Infinity: x times the gamma density, by Loader's saddle point.
 */
export function logGammaKernel(a: number, x: number): number {
  return 0.5 * (Math.log(a) - LOG_TWO_PI) - stirlingError(a) - devianceTerm(a, x);
}

/**
 * The regularised incomplete gamma functions P(a, x) and Q(a, x) for a > 0 and any real x.
 *
 * Below a + 1 the power series of P (Abramowitz & Stegun 1964, 6.5.29), above it the continued fraction of Q
 * (6.5.31) by Lentz's method. For small a and x, where Q is the small one, Q comes from the alternating series.
 */
export function incompleteGamma(a: number, x: number): Tails {
  if (x <= 0) return ALL_ABOVE;
  if (x === Number.POSITIVE_INFINITY) return ALL_BELOW;
  if (a < 0.5 && x < 1) return smallShape(a, x);
  if (x < a + 1) {
    let term = 1 / a;
    let sum = term;
    for (let n = 1; term > 1e-17 * sum; n += 1) {
      term *= x / (a + n);
      sum += term;
    }
    return tailsFromLogLower(logGammaKernel(a, x) + Math.log(sum));
  }
  return tailsFromLogUpper(logGammaKernel(a, x) + Math.log(upperFraction(a, x)));
}

/** P = x^a / gamma(a + 1) * (1 - a x / (a + 1) + a x^2 / (2 (a + 2)) - ...), with Q free of the subtraction from 1. */
function smallShape(a: number, x: number): Tails {
  const logLead = a * Math.log(x) - logGamma(a + 1);
  let power = 1;
  let sum = 0;
  for (let n = 1; Math.abs(power) > 1e-18; n += 1) {
    power *= -x / n;
    sum += (a * power) / (a + n);
  }
  const upper = -Math.expm1(logLead) - Math.exp(logLead) * sum;
  return upper < 0.5 ? tailsFromLogUpper(Math.log(upper)) : tailsFromLogLower(logLead + Math.log1p(sum));
}

/** 1/(x+1-a- 1(1-a)/(x+3-a- 2(2-a)/(x+5-a- ...))), the factor of x^a exp(-x) / gamma(a) in Q. */
function upperFraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = Number.MAX_VALUE;
  let d = 1 / b;
  let fraction = d;
  for (let n = 1; n < 1e7; n += 1) {
    const numerator = -n * (n - a);
    b += 2;
    d = 1 / (numerator * d + b);
    c = b + numerator / c;
    const factor = c * d;
    fraction *= factor;
    if (Math.abs(factor - 1) < 3e-16) break;
  }
  return fraction;
}
