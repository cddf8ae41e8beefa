/** A discrete distribution on 0 .. `largest` (which may be infinite) with one mode near `mean`. */
export type UnimodalCounts = {
  readonly mean: number;
  readonly largest: number;
  /** P(X = k). */
  density(k: number): number;
  /** P(X <= k); 0 for k < 0. */
  cdf(k: number): number;
  /** P(X > k); 1 for k < 0. */
  survival(k: number): number;
};

/** Densities closer than this count as equal, so that rounding does not drop a mirror-image count. */
const EQUAL_WITHIN = 1 + 1e-7;

/**
 * Two-sided p-value that adds up every count no more likely than the observed one (the rule of Fisher's exact test,
 * and of R's binom.test and poisson.test, whose relative tolerance of 1e-7 is kept).
 */
export function leastLikelyTail(x: number, counts: UnimodalCounts): number {
  if (x === counts.mean) return 1;
  const limit = counts.density(x) * EQUAL_WITHIN;
  if (x < counts.mean) {
    const first = firstTrue(Math.ceil(counts.mean), counts.largest, (k) => counts.density(k) <= limit);
    return Math.min(1, counts.cdf(x) + counts.survival(first - 1));
  }
  // Below the mean densities rise with k, so the unlikely counts are those before the first likely one.
  const likely = firstTrue(0, Math.floor(counts.mean), (k) => counts.density(k) > limit);
  return Math.min(1, counts.cdf(likely - 1) + counts.survival(x - 1));
}

/** The first integer in low .. high where a monotone condition holds, or high + 1. */
function firstTrue(low: number, high: number, holds: (k: number) => boolean): number {
  let before = low - 1;
  let step = 1;
  // Doubling steps first: the answer is usually near, and high may be infinite.
  while (before + step <= high && !holds(before + step)) {
    before += step;
    step *= 2;
  }
  let after = Math.min(before + step, high + 1);
  while (after - before > 1) {
    const middle = Math.floor((before + after) / 2);
    if (holds(middle)) after = middle;
    else before = middle;
  }
  return after;
}
