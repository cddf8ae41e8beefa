import { normalQuadrature } from './gauss-hermite';

const POINTS = 101;
let quadrature: ReturnType<typeof normalQuadrature> | undefined;

/**
 * The probability of an event averaged over random effects with the given total variance: E logistic(logit + N(0, variance)).
 * It lies nearer to 1/2 than the probability at random effect 0, and is the one to compare with a crude rate.
 */
export function marginalProbability(logit: number, variance: number): number {
  quadrature ??= normalQuadrature(POINTS);
  const { nodes, weights } = quadrature;
  const spread = Math.sqrt(variance);
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) {
    sum += (weights[i] as number) * logistic(logit + spread * (nodes[i] as number));
  }
  return sum;
}

export function logistic(logit: number): number {
  return 1 / (1 + Math.exp(-logit));
}
