export type ValueAndSlope = { readonly value: number; readonly slope: number };

/** A value this small is met by the last Newton step; a larger one beside a tiny step means a useless slope. */
const NEAR_ZERO = 1e-9;

/**
 * The root of an increasing function on [low, high] by Newton's method, falling back on bisection when a step
 * leaves the bracket or the slope is of no use. Values may be infinite. Answers the end of the range whose side
 * the root lies beyond. Stops at steps below `tolerance` (absolute near 0, relative further out).
 */
export function increasingRoot(
  evaluate: (u: number) => ValueAndSlope,
  start: number,
  low: number,
  high: number,
  tolerance = 1e-15,
): number {
  let below = low;
  let above = high;
  let u = Math.min(Math.max(start, low), high);
  for (let step = 0; step < 400; step += 1) {
    const { value, slope } = evaluate(u);
    if (value === 0) return u;
    if (value < 0) below = u;
    else above = u;
    const enough = tolerance * (1 + Math.abs(u));
    const newton = u - value / slope;
    const inside = newton > below && newton < above;
    const trusted = Math.abs(newton - u) > enough || Math.abs(value) <= NEAR_ZERO;
    const next = inside && trusted ? newton : (below + above) / 2;
    const change = Math.abs(next - u);
    u = next;
    if (change <= enough) break;
  }
  return u;
}
