import { ArgumentError } from './outcome';

/** Enough halvings to bring any interval of doubles down to neighbouring numbers, with room for detours. */
const MOST_STEPS = 2_500;

type Point = { readonly x: number; readonly y: number };

/**
 * A root of a continuous function between two points where it has opposite signs, by Brent's method: inverse
 * quadratic or linear steps where they help, halving where they do not.
 *
 * Source: Brent (1973, Algorithms for Minimization without Derivatives, ch. 4, from memory).
 *
 * @param tolerance width of the interval around the root to stop at; 0 = to the last bits.
 * @throws ArgumentError when the function has the same sign at both ends, or is not a number somewhere.
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance = 0): number {
  const evaluate = (x: number): Point => {
    const y = f(x);
    if (Number.isNaN(y)) throw new ArgumentError('f', `is not a number at ${x}`);
    return { x, y };
  };
  let before = evaluate(low);
  let best = evaluate(high);
  // The point that brackets the root together with `best`.
  let opposite = before;
  if (before.y === 0) return before.x;
  if (best.y === 0) return best.x;
  if (Math.sign(before.y) === Math.sign(best.y)) {
    throw new ArgumentError('f', `has no change of sign between ${low} and ${high}`);
  }
  for (let round = 0; round < MOST_STEPS; round += 1) {
    const previousStep = best.x - before.x;
    if (Math.abs(opposite.y) < Math.abs(best.y)) {
      before = best;
      best = opposite;
      opposite = before;
    }
    const reach = 2 * Number.EPSILON * Math.abs(best.x) + tolerance / 2;
    const half = (opposite.x - best.x) / 2;
    if (Math.abs(half) <= reach || best.y === 0) return best.x;
    let step = half;
    if (Math.abs(previousStep) >= reach && Math.abs(before.y) > Math.abs(best.y)) {
      const guess = interpolated(before, best, opposite);
      const inside = 1.5 * Math.abs(half) - reach / 2;
      const shrinking = Math.abs(previousStep) / 2;
      const useful = guess * half > 0 && Math.abs(guess) < inside && Math.abs(guess) < shrinking;
      if (useful) step = guess;
    }
    if (Math.abs(step) < reach) step = Math.sign(step) * reach;
    before = best;
    best = evaluate(best.x + step);
    if (Math.sign(best.y) === Math.sign(opposite.y)) opposite = before;
  }
  return best.x;
}

/** The step from `best` suggested by inverse quadratic interpolation, or linear where there are but two points. */
function interpolated(before: Point, best: Point, opposite: Point): number {
  const width = opposite.x - best.x;
  const s = best.y / before.y;
  if (before.x === opposite.x) return (width * s) / (s - 1);
  const q = before.y / opposite.y;
  const r = best.y / opposite.y;
  const numerator = s * (width * q * (q - r) - (best.x - before.x) * (r - 1));
  return -numerator / ((q - 1) * (r - 1) * (s - 1));
}
