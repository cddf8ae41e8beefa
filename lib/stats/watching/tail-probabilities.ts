/**
 * How surprising a count is under a stated distribution.
 *
 * `upper` = P(X >= x), `lower` = P(X <= x); the mid-P values take half of P(X = x) off, which makes them hold their
 * level on average instead of at most. `twoSided...` values are at most 1.
 */
export type TailProbabilities = {
  readonly upper: number;
  readonly lower: number;
  readonly upperMidP: number;
  readonly lowerMidP: number;
  /** Twice the smaller tail. */
  readonly twoSidedDoubled: number;
  /** Twice the smaller mid-P tail. */
  readonly twoSidedMidP: number;
};

/** All tails from P(X <= x), P(X >= x) and P(X = x). */
export function tailProbabilities(lower: number, upper: number, atCount: number): TailProbabilities {
  const lowerMidP = Math.max(0, lower - atCount / 2);
  const upperMidP = Math.max(0, upper - atCount / 2);
  return {
    upper,
    lower,
    upperMidP,
    lowerMidP,
    twoSidedDoubled: Math.min(1, 2 * Math.min(lower, upper)),
    twoSidedMidP: Math.min(1, 2 * Math.min(lowerMidP, upperMidP)),
  };
}
