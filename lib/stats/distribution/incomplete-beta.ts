import { devianceTerm, stirlingError } from './saddle-point';
import { ALL_ABOVE, ALL_BELOW, flip, type Tails, tailsFromLogLower } from './tails';

const LOG_TWO_PI = 1.8378770664093456;

/** log(x^a y^b / B(a, b)) with y = 1 - x, for a, b > 0 and 0 < x < 1, by Loader's saddle point. */
export function logBetaKernel(a: number, b: number, x: number, y: number): number {
  const n = a + b;
  return (
    0.5 * (Math.log(a) + Math.log(b / n) - LOG_TWO_PI) +
    (stirlingError(n) - stirlingError(a) - stirlingError(b)) -
    devianceTerm(a, n * x) -
    devianceTerm(b, n * y)
  );
}

/**
 * The regularised incomplete beta function I_x(a, b) and its complement. The caller gives y = 1 - x as well, so
 * that a tail close to either end is not lost in the subtraction.
 *
 * Continued fraction of Abramowitz & Stegun (1964), 26.5.8, by Lentz's method, on the side of the mean where it
 * converges fast (about sqrt(max(a, b)) steps).
 */
export function incompleteBeta(a: number, b: number, x: number, y: number): Tails {
  if (x <= 0) return ALL_ABOVE;
  if (y <= 0) return ALL_BELOW;
  if (x > (a + 1) / (a + b + 2)) return flip(lowerByFraction(b, a, y, x));
  return lowerByFraction(a, b, x, y);
}

function lowerByFraction(a: number, b: number, x: number, y: number): Tails {
  return tailsFromLogLower(logBetaKernel(a, b, x, y) - Math.log(a) + Math.log(fraction(a, b, x)));
}

/** 1/(1+ d1/(1+ d2/(1+ ...))) of I_x(a, b) = x^a y^b / (a B(a, b)) times this. */
function fraction(a: number, b: number, x: number): number {
  const sum = a + b;
  let c = 1;
  let d = guarded(1 - (sum * x) / (a + 1));
  let value = d;
  for (let m = 1; m < 1e7; m += 1) {
    const twice = a + 2 * m;
    const even = ((m * (b - m)) / (twice - 1)) * (x / twice);
    d = guarded(1 + even * d);
    c = 1 + even / c || Number.MIN_VALUE;
    value *= c * d;
    const odd = ((-(a + m) * (sum + m)) / twice) * (x / (twice + 1));
    d = guarded(1 + odd * d);
    c = 1 + odd / c || Number.MIN_VALUE;
    const factor = c * d;
    value *= factor;
    if (Math.abs(factor - 1) < 3e-16) break;
  }
  return value;
}

/** The reciprocal, kept off a division by zero as Lentz's method asks. */
function guarded(denominator: number): number {
  return 1 / (Math.abs(denominator) < 1e-300 ? 1e-300 : denominator);
}
