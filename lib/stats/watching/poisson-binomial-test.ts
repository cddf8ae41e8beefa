import { requireCount, requireProbability } from '../check-argument';
import { poissonBinomialDensities } from '../distribution/poisson-binomial';
import { elementAt } from '../element-at';
import { ArgumentError, type CannotCompute, cannotCompute } from '../outcome';
import { type TailProbabilities, tailProbabilities } from './tail-probabilities';

export type PoissonBinomialTest = {
  readonly kind: 'test';
  readonly expectedEvents: number;
  readonly variance: number;
  /** P(X = events). */
  readonly atCount: number;
  readonly tails: TailProbabilities;
  /** Observed over expected. */
  readonly ratio: number | CannotCompute;
  readonly z: number | CannotCompute;
  /** P(X = k) for k = 0 .. n. */
  readonly densities: readonly number[];
  readonly n: number;
  readonly method: 'exact Poisson-binomial test';
};

/**
 * Exact test of a count of events against trials that each had their own probability (batches at different
 * contamination risks, given by a model): X = sum of independent Bernoulli(p_i).
 *
 * Both tails are sums of non-negative terms, so far tails keep their relative accuracy.
 *
 * @param probabilities one per trial, 0-1.
 * @throws ArgumentError for a count above the number of trials or a probability outside 0-1.
 */
export function poissonBinomialTest(
  events: number,
  probabilities: readonly number[],
): PoissonBinomialTest | CannotCompute {
  requireCount('events', events);
  probabilities.forEach((p, index) => {
    requireProbability(`probabilities[${index}]`, p);
  });
  const n = probabilities.length;
  if (events > n) throw new ArgumentError('events', `${events} is more than the ${n} trials`);
  if (n === 0) return cannotCompute('no-data', 'There are no trials to test.');
  const densities = poissonBinomialDensities(probabilities);
  const atCount = elementAt(densities, events);
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const expectedEvents = sum(probabilities);
  const variance = sum(probabilities.map((p) => p * (1 - p)));
  return {
    kind: 'test',
    expectedEvents,
    variance,
    atCount,
    tails: tailProbabilities(
      Math.min(1, sum(densities.slice(0, events + 1))),
      Math.min(1, sum(densities.slice(events).reverse())),
      atCount,
    ),
    ratio:
      expectedEvents > 0
        ? events / expectedEvents
        : cannotCompute('zero-denominator', 'No event was expected, so there is no ratio to it.'),
    z:
      variance > 0
        ? (events - expectedEvents) / Math.sqrt(variance)
        : cannotCompute('no-variation', 'Probabilities of 0 and 1 leave no spread to measure against.'),
    densities,
    n,
    method: 'exact Poisson-binomial test',
  };
}
