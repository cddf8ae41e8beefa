import { requireOpenProbability, requirePositive } from '../check-argument';
import { findRoot } from '../find-root';
import { type CannotCompute, cannotCompute } from '../outcome';
import { twoProportionsPower } from './two-proportions-power';

export type DetectableProportions = {
  readonly kind: 'detectable';
  /** The nearest proportion below the reference that would be told apart; there may be none. */
  readonly below: number | CannotCompute;
  readonly above: number | CannotCompute;
  readonly method: string;
};

/**
 * What difference can this many batches detect? The proportions nearest to `reference` on either side that the
 * two-sided z test of two equal groups would find with the power asked for.
 *
 * @param perGroup observations per group counted as independent: divide the units by `designEffect` first.
 * @throws ArgumentError for values out of range.
 */
export function twoProportionsDetectable({
  reference,
  perGroup,
  power,
  significance,
}: {
  readonly reference: number;
  readonly perGroup: number;
  readonly power: number;
  readonly significance: number;
}): DetectableProportions {
  requireOpenProbability('reference', reference);
  requirePositive('perGroup', perGroup);
  requireOpenProbability('power', power);
  requireOpenProbability('significance', significance);
  const excess = (other: number) =>
    twoProportionsPower({ first: reference, second: other, perGroup, significance }) - power;
  const nearest = (limit: number): number | CannotCompute => {
    if (excess(limit) < 0 || excess(reference) > 0) {
      return cannotCompute(
        'out-of-range',
        'Even the largest possible difference on this side would be missed too often.',
      );
    }
    return findRoot(excess, reference, limit);
  };
  return {
    kind: 'detectable',
    below: nearest(0),
    above: nearest(1),
    method: 'two-sided z test of two proportions',
  };
}
