import { requireProbability } from '../check-argument';

/**
 * The distribution of the number of events among independent trials with their own probabilities: element k of
 * the answer is P(X = k), for k = 0..probabilities.length. Exact convolution, one trial after another; every step
 * adds and multiplies non-negative numbers, so that small probabilities keep their relative accuracy.
 *
 * An empty list gives [1]. Takes n^2 / 2 steps for n trials.
 * @throws ArgumentError naming the first probability outside 0..1.
 */
export function poissonBinomialDensities(probabilities: readonly number[]): number[] {
  const densities = new Float64Array(probabilities.length + 1);
  densities[0] = 1;
  probabilities.forEach((p, trial) => {
    requireProbability(`probabilities[${trial}]`, p);
    for (let k = trial + 1; k >= 1; k -= 1) {
      densities[k] = (densities[k] ?? 0) * (1 - p) + (densities[k - 1] ?? 0) * p;
    }
    densities[0] = (densities[0] ?? 0) * (1 - p);
  });
  return Array.from(densities);
}
