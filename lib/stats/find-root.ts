import { ArgumentError } from './outcome';

/** Enough halvings to bring any interval of doubles down to neighbouring numbers, with room for Brent's detours. */
const MOST_STEPS = 400;

/**
 * A root of a continuous function between two points where it has opposite signs, to the last few bits
 * (Brent 1973, Algorithms for Minimization without Derivatives, ch. 4, from memory: inverse quadratic or linear
 * steps where they help, halving where they do not).
 *
 * @throws ArgumentError when the function has the same sign at both ends, or is not a number somewhere.
 */
export function findRoot(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a), f(b)];
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0) && !(Math.sign(fa) * Math.sign(fb) < 0)) {
    throw new ArgumentError('f', `has no change of sign between ${low} and ${high}`);
  }
  let [c, fc] = [a, fa];
  let step = b - a;
  let previousStep = step;
  for (let round = 0; round < MOST_STEPS; round += 1) {
    if (Math.sign(fb) === Math.sign(fc)) {
      [c, fc] = [a, fa];
      step = b - a;
      previousStep = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      [a, b, c] = [b, c, b];
      [fa, fb, fc] = [fb, fc, fb];
    }
    const tolerance = 2 * Number.EPSILON * Math.abs(b);
    const half = (c - b) / 2;
    if (Math.abs(half) <= tolerance || fb === 0) return b;
    const guess = interpolate(a, b, c, fa, fb, fc);
    const useful =
      Math.abs(previousStep) >= tolerance &&
      Math.abs(fa) > Math.abs(fb) &&
      guess * Math.sign(half) > 0 &&
      Math.abs(guess) < Math.min(1.5 * Math.abs(half) - Math.abs(tolerance) / 2, Math.abs(previousStep) / 2);
    previousStep = useful ? step : half;
    step = useful ? guess : half;
    [a, fa] = [b, fb];
    b += Math.abs(step) > tolerance ? step : Math.sign(half) * Math.max(tolerance, Number.MIN_VALUE);
    fb = f(b);
    if (Number.isNaN(fb)) throw new ArgumentError('f', `is not a number at ${b}`);
  }
  return b;
}

/** The step from b that inverse quadratic (or, with two points, linear) interpolation suggests. */
function interpolate(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const s = fb / fa;
  if (a === c) return ((c - b) * s) / (s - 1);
  const q = fa / fc;
  const r = fb / fc;
  const p = s * ((c - b) * q * (q - r) - (b - a) * (r - 1));
  return -p / ((q - 1) * (r - 1) * (s - 1));
}
