import { requireEventsOfTrials, requireProbability } from '../check-argument';
import { binomialCdf, binomialDensity, binomialSurvival } from '../distribution/binomial';
import { type CannotCompute, cannotCompute } from '../outcome';
import { leastLikelyTail } from './least-likely-tail';
import { type TailProbabilities, tailProbabilities } from './tail-probabilities';

export type BinomialTest = {
  readonly kind: 'test';
  readonly expectedEvents: number;
  readonly tails: TailProbabilities;
  /** Every count no more likely than the one seen. */
  readonly twoSidedLeastLikely: number;
  /** (x - n p) / sqrt(n p (1 - p)). */
  readonly z: number | CannotCompute;
  readonly n: number;
  readonly method: 'exact binomial test';
};

/**
 * Exact test that `events` of `trials` independent units come from the probability `probability`.
 * With units sharing batches the test is too eager; use the funnel with overdispersion or the mixed model.
 *
 * @throws ArgumentError for counts that are no counts, more events than trials, or a probability outside 0-1.
 */
export function binomialTest(
  events: number,
  trials: number,
  probability: number,
): BinomialTest | CannotCompute {
  requireEventsOfTrials('events', events, 'trials', trials);
  requireProbability('probability', probability);
  if (trials === 0) return cannotCompute('no-data', 'There are no units to test.');
  const tails = tailProbabilities(
    binomialCdf(events, trials, probability),
    events === 0 ? 1 : binomialSurvival(events - 1, trials, probability),
    binomialDensity(events, trials, probability),
  );
  const variance = trials * probability * (1 - probability);
  return {
    kind: 'test',
    expectedEvents: trials * probability,
    tails,
    twoSidedLeastLikely: leastLikelyTail(events, {
      mean: trials * probability,
      largest: trials,
      density: (k) => binomialDensity(k, trials, probability),
      cdf: (k) => (k < 0 ? 0 : binomialCdf(k, trials, probability)),
      survival: (k) => (k < 0 ? 1 : binomialSurvival(k, trials, probability)),
    }),
    z:
      variance > 0
        ? (events - trials * probability) / Math.sqrt(variance)
        : cannotCompute('no-variation', 'A probability of 0 or 1 leaves no spread to measure against.'),
    n: trials,
    method: 'exact binomial test',
  };
}
