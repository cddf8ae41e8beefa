import { logBinomialCoefficient } from '../distribution/binomial';

/** Log-likelihood of one cluster with its derivatives in mu (the proportion) and theta = rho / (1 - rho). */
export type ClusterLikelihood = {
  readonly value: number;
  readonly mu: number;
  readonly theta: number;
  readonly muMu: number;
  readonly muTheta: number;
  readonly thetaTheta: number;
};

/**
 * The beta-binomial log-likelihood of `events` of `trials`, with its binomial coefficient, in product form:
 * sum_{j<x} log(mu + j theta) + sum_{j<n-x} log(1 - mu + j theta) - sum_{j<n} log(1 + j theta).
 * Valid at theta = 0, where it is the binomial. Here rho is the intra-cluster correlation 1 / (a + b + 1).
 *
 * Source: product form of Griffiths (1973), Biometrics 29:637-648 (citation from memory).
 */
export function clusterLikelihood(
  events: number,
  trials: number,
  mu: number,
  theta: number,
): ClusterLikelihood {
  const of = rising(mu, theta, events);
  const others = rising(1 - mu, theta, trials - events);
  const all = rising(1, theta, trials);
  return {
    value: of.log + others.log - all.log + logBinomialCoefficient(trials, events),
    mu: of.reciprocal - others.reciprocal,
    theta: of.ratio + others.ratio - all.ratio,
    muMu: -of.reciprocalSquare - others.reciprocalSquare,
    muTheta: -of.ratioReciprocal + others.ratioReciprocal,
    thetaTheta: -of.ratioSquare - others.ratioSquare + all.ratioSquare,
  };
}

/** Sums over j < count of log(base + j step) and of the terms its derivatives need. */
function rising(base: number, step: number, count: number) {
  const sums = { log: 0, reciprocal: 0, ratio: 0, reciprocalSquare: 0, ratioReciprocal: 0, ratioSquare: 0 };
  for (let j = 0; j < count; j += 1) {
    const factor = base + j * step;
    const reciprocal = 1 / factor;
    const ratio = j * reciprocal;
    sums.log += Math.log(factor);
    sums.reciprocal += reciprocal;
    sums.ratio += ratio;
    sums.reciprocalSquare += reciprocal * reciprocal;
    sums.ratioReciprocal += ratio * reciprocal;
    sums.ratioSquare += ratio * ratio;
  }
  return sums;
}
