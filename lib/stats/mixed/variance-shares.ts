import { requireNonNegative } from '../check-argument';
import { type CannotCompute, cannotCompute } from '../outcome';

/** A variance with its limits; `high` may be infinite. */
export type LimitedVariance = { readonly variance: number; readonly low: number; readonly high: number };

/** 0-1. */
export type VarianceShare = { readonly estimate: number; readonly low: number; readonly high: number };

/**
 * The share of each variance in their sum, with limits.
 *
 * With A the variance in question and B the sum of the others, share = A / (A + B). Limits of B recover the variance of a sum
 * from the limits of its parts (B - sqrt(sum (v_i - low_i)^2), and alike upwards); limits of the share square and add what
 * happens when A alone, and B alone, goes to its limit. A limit of A at 0 makes the lower limit of the share 0. Parts are taken
 * as independent, which estimated variances are only nearly: see CALIBRATION.md.
 *
 * Sources: Graybill & Wang (1980), JASA 75:869-873, for sums of variance components; Zou & Donner (2008), Statistics in
 * Medicine 27:1693-1702, for recovering variances from limits (both from memory).
 *
 * @param parts in the order of the answer; limits of a confidence level that the shares then have.
 * @returns one share per part; a reason when all variances are 0.
 * @throws ArgumentError for a variance or a lower limit that is negative or not finite.
 */
export function varianceShares(parts: readonly LimitedVariance[]): readonly VarianceShare[] | CannotCompute {
  parts.forEach(({ variance, low }, at) => {
    requireNonNegative(`parts[${at}].variance`, variance);
    requireNonNegative(`parts[${at}].low`, low);
  });
  const total = parts.reduce((sum, { variance }) => sum + variance, 0);
  if (total === 0) return cannotCompute('no-variation', 'Nothing varies beyond chance.');
  return parts.map((part, at) => {
    const others = parts.filter((_, other) => other !== at);
    const rest = others.reduce((sum, { variance }) => sum + variance, 0);
    const below = Math.hypot(...others.map(({ variance, low }) => variance - low));
    const above = Math.hypot(...others.map(({ variance, high }) => high - variance));
    const estimate = part.variance / total;
    const least = shareOf(part.low, rest);
    const most = shareOf(part.high, rest);
    const withMoreRest = shareOf(part.variance, rest + above);
    const withLessRest = shareOf(part.variance, Math.max(0, rest - below));
    const low = part.low === 0 ? 0 : estimate - Math.hypot(estimate - least, estimate - withMoreRest);
    const high = estimate + Math.hypot(most - estimate, withLessRest - estimate);
    return { estimate, low: Math.max(0, low), high: Math.min(1, high) };
  });
}

function shareOf(part: number, rest: number): number {
  if (part === Number.POSITIVE_INFINITY) return 1;
  if (rest === Number.POSITIVE_INFINITY) return 0;
  return part === 0 ? 0 : part / (part + rest);
}
