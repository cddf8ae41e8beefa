import { normalQuadrature } from './gauss-hermite';
import { logistic } from './marginal-probability';

const POINTS = 61;
let quadrature: ReturnType<typeof normalQuadrature> | undefined;

/**
 * Mean and variance of a probability whose log odds vary: of logistic(logit + N(0, variance)), by Gauss-Hermite
 * quadrature. The mean is `marginalProbability`; the variance is what clumps events beyond the binomial, 0 at variance 0.
 */
export function marginalMoments(logit: number, variance: number): { mean: number; variance: number } {
  quadrature ??= normalQuadrature(POINTS);
  const { nodes, weights } = quadrature;
  const spread = Math.sqrt(variance);
  const values = Array.from(nodes, (node) => logistic(logit + spread * node));
  const mean = values.reduce((sum, value, at) => sum + (weights[at] as number) * value, 0);
  const square = values.reduce((sum, value, at) => sum + (weights[at] as number) * (value - mean) ** 2, 0);
  return { mean, variance: square };
}
