import { normalQuantile } from '../distribution/normal';

/** A standard deviation with its standard error and the number of levels that it is estimated from. */
export type CurvedDeviation = {
  readonly estimate: number;
  readonly standardError: number;
  readonly levels: number;
};

/** With fewer levels the likelihood is no parabola in any scale, and its profile is followed instead. */
const MANY_LEVELS = 100;

/**
 * Limits of a standard deviation from how the likelihood curves at its estimate: what the profile likelihood gives, to a few
 * hundredths of the width, without fitting the model again some hundred times. Undefined with few levels and at 0.
 *
 * Of the mean square w of k levels the likelihood is nearly a parabola in w^(-1/3) (Anscombe 1964, Annals of the Institute of
 * Statistical Mathematics 16:1-19, citation from memory). Here w is the variance with as much noise about each level as
 * explains its standard error, w sqrt(2 / k). A limit below 0 is 0: the data do not rule out that levels are alike.
 *
 * @param level two-sided confidence, above 0 and below 1.
 */
export function curvatureLimits(
  { estimate, standardError, levels }: CurvedDeviation,
  level: number,
): { readonly low: number; readonly high: number } | undefined {
  const variance = estimate ** 2;
  const error = 2 * estimate * standardError;
  if (levels < MANY_LEVELS || !(error > 0)) return undefined;
  const noise = Math.max(0, error * Math.sqrt(levels / 2) - variance);
  const square = variance + noise;
  const step = (normalQuantile((1 + level) / 2) * error) / (3 * square);
  const limit = (side: 1 | -1) => Math.sqrt(Math.max(0, square * (1 + side * step) ** -3 - noise));
  return { low: limit(1), high: limit(-1) };
}
