import { requireOpenProbability, requirePositive, requireProbability } from '../check-argument';
import { normalQuantile } from '../distribution/normal';
import { findRoot } from '../find-root';
import { type CannotCompute, cannotCompute } from '../outcome';
import { twoProportionsPower } from './two-proportions-power';
import { wholeNumber } from './whole-number';

export type TwoProportionsPlan = {
  readonly first: number;
  readonly second: number;
  readonly power: number;
  /** Two-sided significance level. */
  readonly significance: number;
  /** Size of the second group over that of the first; 1 = equal groups. */
  readonly ratio: number;
};

export type SampleSize = {
  readonly kind: 'sample-size';
  /** Independent observations of each group, not rounded. */
  readonly firstGroup: number;
  readonly secondGroup: number;
  readonly firstGroupWhole: number;
  readonly secondGroupWhole: number;
  /** With the continuity correction: what an exact test needs. */
  readonly firstGroupCorrected: number;
  readonly secondGroupCorrected: number;
  readonly firstGroupCorrectedWhole: number;
  readonly secondGroupCorrectedWhole: number;
  readonly method: string;
};

/**
 * Independent observations needed to tell two proportions apart by the two-sided z test:
 * n1 = (z_a sqrt((1 + 1/r) p q) + z_b sqrt(p1 q1 + p2 q2 / r))^2 / (p1 - p2)^2, n2 = r n1, p the weighted mean;
 * with the continuity correction n1 / 4 (1 + sqrt(1 + 2 (r + 1) / (n1 r |p1 - p2|)))^2.
 *
 * Source: Fleiss, Tytun & Ury (1980, Biometrics 36, 343-346, from memory).
 *
 * @returns the sizes; `not-identifiable` when the proportions are equal, or `out-of-range` when the power asked for
 *   is below the significance level.
 * @throws ArgumentError for probabilities outside 0-1 or a ratio not above 0.
 */
export function twoProportionsSampleSize(plan: TwoProportionsPlan): SampleSize | CannotCompute {
  const { first, second, power, significance, ratio } = plan;
  requireProbability('first', first);
  requireProbability('second', second);
  requireOpenProbability('power', power);
  requireOpenProbability('significance', significance);
  requirePositive('ratio', ratio);
  const difference = Math.abs(first - second);
  if (difference === 0) {
    return cannotCompute(
      'not-identifiable',
      'The two proportions are the same: no number of batches can tell them apart.',
    );
  }
  if (power <= significance) {
    return cannotCompute('out-of-range', 'A power at or below the significance level needs no data.');
  }
  const mean = (first + ratio * second) / (1 + ratio);
  const reach =
    normalQuantile(1 - significance / 2) * Math.sqrt((1 + 1 / ratio) * mean * (1 - mean)) +
    normalQuantile(power) * Math.sqrt(first * (1 - first) + (second * (1 - second)) / ratio);
  const size = (reach / difference) ** 2;
  const corrected = (size / 4) * (1 + Math.sqrt(1 + (2 * (ratio + 1)) / (size * ratio * difference))) ** 2;
  return {
    kind: 'sample-size',
    firstGroup: size,
    secondGroup: ratio * size,
    firstGroupWhole: wholeNumber(size),
    secondGroupWhole: wholeNumber(ratio * size),
    firstGroupCorrected: corrected,
    secondGroupCorrected: ratio * corrected,
    firstGroupCorrectedWhole: wholeNumber(corrected),
    secondGroupCorrectedWhole: wholeNumber(ratio * corrected),
    method: 'two-sided z test of two proportions',
  };
}

/** Equal group size at which the power of both tails together is the one asked for. */
export function twoProportionsSampleSizeBothTails(
  plan: Omit<TwoProportionsPlan, 'ratio'>,
): number | CannotCompute {
  const oneTail = twoProportionsSampleSize({ ...plan, ratio: 1 });
  if (oneTail.kind === 'cannot-compute') return oneTail;
  const { first, second, significance, power } = plan;
  const excess = (perGroup: number) =>
    twoProportionsPower({ first, second, perGroup, significance }, true) - power;
  // The second tail only adds power, so the size of one tail is enough.
  if (excess(oneTail.firstGroup) <= 0) return oneTail.firstGroup;
  return findRoot(excess, Number.MIN_VALUE, oneTail.firstGroup);
}
