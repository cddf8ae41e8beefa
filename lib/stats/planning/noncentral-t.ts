import { requireFinite, requirePositive } from '../check-argument';
import { logGamma } from '../distribution/gamma';
import { normalSurvival } from '../distribution/normal';

/** The integrand falls below exp(-CUT) of its peak outside the range integrated. */
const CUT = 42;

/**
 * P(T > t) for Student's t with `df` degrees of freedom (not necessarily whole) and noncentrality `delta`:
 * T = (Z + delta) / S with Z normal and S = sqrt(chi-square(df) / df), so that
 * P(T > t) = integral over u = log S of P(Z > t exp(u) - delta) f(u),
 * f(u) = 2 (df/2)^(df/2) / Gamma(df/2) exp(df u - df exp(2u) / 2).
 *
 * The integrand is smooth and falls off at both ends, where the trapezoidal rule converges geometrically; the result
 * is good to about 1e-13 absolute for the df and delta of sample size planning (df >= 0.5, delta up to some 40).
 */
export function noncentralTSurvival(t: number, df: number, delta: number): number {
  requireFinite('t', t);
  requirePositive('df', df);
  requireFinite('delta', delta);
  const logScale = Math.log(2) + (df / 2) * Math.log(df / 2) - logGamma(df / 2);
  // Around u = 0 the exponent is -df/2 - df u^2 + ...: below, it falls like df u; above, like -df exp(2u) / 2.
  const spread = Math.sqrt(CUT / df);
  const from = -Math.max(1.5 * spread, CUT / df + 0.5);
  const to = Math.min(spread, 0.5 * Math.log(1 + (2 * CUT) / df + 2 * spread));
  const step = Math.min(1 / (6 * Math.sqrt(2 * df)), 1 / (6 * Math.max(1, Math.abs(t))), 0.05);
  const count = Math.ceil((to - from) / step);
  let sum = 0;
  for (let index = 0; index <= count; index += 1) {
    const u = from + (index * (to - from)) / count;
    const exponent = logScale + df * u - (df / 2) * Math.exp(2 * u);
    if (exponent > -745) sum += Math.exp(exponent) * normalSurvival(t * Math.exp(u) - delta);
  }
  return Math.min(1, (sum * (to - from)) / count);
}
