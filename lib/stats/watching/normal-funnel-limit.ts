import { requireNonNegative, requireOpenProbability, requirePositive } from '../check-argument';
import { normalQuantile } from '../distribution/normal';

/** How limits are widened: not at all, by a factor on the standard error, or by a variance added to it. */
export type Widening =
  | { readonly kind: 'none' }
  | { readonly kind: 'multiplicative'; readonly dispersion: number }
  | { readonly kind: 'additive'; readonly betweenVariance: number };

/**
 * Normal approximation to a funnel limit: target + z se (none), target + z se sqrt(max(1, dispersion))
 * (multiplicative), target + z sqrt(se^2 + betweenVariance) (additive). It may lie outside 0-1; prefer
 * `overdispersedFunnelLimit` for sites with few events.
 *
 * Source: Spiegelhalter (2005, Statistics in Medicine 24, 1185-1202, from memory).
 *
 * @param standardError of the proportion at the target. @param probability lower-tail probability of the limit.
 */
export function normalFunnelLimit(
  target: number,
  standardError: number,
  probability: number,
  widening: Widening,
): number {
  requireOpenProbability('target', target);
  requirePositive('standardError', standardError);
  requireOpenProbability('probability', probability);
  return target + normalQuantile(probability) * widened(standardError, widening);
}

function widened(standardError: number, widening: Widening): number {
  switch (widening.kind) {
    case 'none':
      return standardError;
    case 'multiplicative':
      requireNonNegative('dispersion', widening.dispersion);
      return standardError * Math.sqrt(Math.max(1, widening.dispersion));
    case 'additive':
      requireNonNegative('betweenVariance', widening.betweenVariance);
      return Math.sqrt(standardError ** 2 + widening.betweenVariance);
  }
}
