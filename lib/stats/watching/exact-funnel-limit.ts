import { requireCount, requireOpenProbability } from '../check-argument';
import { binomialCdf, binomialDensity, binomialQuantile } from '../distribution/binomial';
import { elementAt } from '../element-at';
import { ArgumentError } from '../outcome';
import { betaBinomialDensities } from './beta-binomial-densities';

/**
 * Funnel limit of a proportion for a site of `units` units when every unit is an event with probability `target`:
 * the binomial quantile r, interpolated so that the limit moves smoothly with `units`,
 * (r - alpha) / units with alpha = (F(r) - probability) / P(X = r).
 *
 * Source: Spiegelhalter (2005, Statistics in Medicine 24, 1185-1202, appendix A.1.1, from memory). The interpolated
 * limit can lie outside 0-1, which means that no count of so few units is that unusual; clamp it to draw it.
 *
 * @param probability lower-tail probability of the limit, e.g. 0.025 and 0.975 for 95 % limits.
 */
export function exactFunnelLimit(target: number, units: number, probability: number): number {
  checkArguments(target, units, probability);
  const r = binomialQuantile(probability, units, target);
  return interpolated(
    r,
    units,
    probability,
    binomialCdf(r, units, target),
    binomialDensity(r, units, target),
  );
}

/**
 * The same limit when sites differ beyond chance: the true rates of sites vary with mean `target` and variance
 * `betweenVariance`, so that a count is beta-binomial with within-site correlation
 * betweenVariance / (target (1 - target)). Variance 0 gives the binomial limit.
 *
 * @param betweenVariance 0 up to, not including, target (1 - target), as a squared fraction.
 */
export function overdispersedFunnelLimit(
  target: number,
  units: number,
  probability: number,
  betweenVariance: number,
): number {
  checkArguments(target, units, probability);
  const correlation = betweenVariance / (target * (1 - target));
  if (!(correlation >= 0 && correlation < 1)) {
    throw new ArgumentError(
      'betweenVariance',
      `must be from 0 to below target (1 - target), not ${betweenVariance}`,
    );
  }
  const densities = betaBinomialDensities(units, target, correlation);
  let cumulative = elementAt(densities, 0);
  let r = 0;
  while (cumulative < probability && r < units) {
    r += 1;
    cumulative += elementAt(densities, r);
  }
  return interpolated(r, units, probability, cumulative, elementAt(densities, r));
}

function checkArguments(target: number, units: number, probability: number): void {
  requireOpenProbability('target', target);
  requireCount('units', units);
  if (units === 0) throw new ArgumentError('units', 'must be at least 1');
  requireOpenProbability('probability', probability);
}

function interpolated(
  r: number,
  units: number,
  probability: number,
  cumulative: number,
  density: number,
): number {
  return (r - (cumulative - probability) / density) / units;
}
