import { requireCount, requireFinite, requireNonNegative } from '../check-argument';
import { binomialSurvival } from '../distribution/binomial';
import { normalQuadrature } from '../mixed/binomial/gauss-hermite';
import { logistic } from '../mixed/binomial/marginal-probability';

const POINTS = 61;
let quadrature: ReturnType<typeof normalQuadrature> | undefined;

/**
 * P(X >= events) of a count of `units` that share one probability whose log odds are N(logit, standardDeviation^2): the upper
 * tail of the predictive distribution of one new batch, by Gauss-Hermite quadrature over the log odds. With a standard
 * deviation of 0 it is the binomial tail; at 0 events it is 1.
 *
 * @throws ArgumentError for counts that are none, or a spread that is negative or not finite.
 */
export function clusteredTail(
  events: number,
  units: number,
  logit: number,
  standardDeviation: number,
): number {
  requireCount('units', units);
  requireCount('events', events);
  requireFinite('logit', logit);
  requireNonNegative('standardDeviation', standardDeviation);
  if (events === 0) return 1;
  if (events > units) return 0;
  quadrature ??= normalQuadrature(POINTS);
  const { nodes, weights } = quadrature;
  let sum = 0;
  for (let at = 0; at < nodes.length; at++) {
    const probability = logistic(logit + standardDeviation * (nodes[at] as number));
    sum += (weights[at] as number) * binomialSurvival(events - 1, units, probability);
  }
  return Math.min(1, sum);
}
