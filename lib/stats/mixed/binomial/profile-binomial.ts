import { chiSquareQuantile } from '../../distribution/chi-square';
import { MANY_ROWS, profileAccuracyFor } from '../costly-tail';
import { bestTheta, thetaOptions } from '../optimise/best-theta';
import { HeldCriterion } from '../optimise/held-criterion';
import { minimise } from '../optimise/minimise';
import { profileLimits } from '../profile-limits';
import type { DeviationInterval } from '../variance-interval';
import type { BinomialMixedFit } from './fit-binomial';
import { LaplaceCriterion } from './laplace-criterion';
import { QuadratureCriterion } from './quadrature-criterion';

/** Nearer to 0 than this a standard deviation tells little about which way to go. */
const NEAR_ZERO = 0.01;

/**
 * Profile-likelihood intervals of the standard deviations (logit scale) of a binomial mixed model, from the approximation it
 * was fitted by. A lower limit of 0 means that the data do not rule out that levels are alike; with few levels the upper
 * limit is large, and honestly so.
 *
 * @param level confidence, 0.95 by default.
 * @param terms the places of the terms asked about; all by default.
 */
export function profileBinomialDeviations(
  fit: BinomialMixedFit,
  level = 0.95,
  terms: readonly number[] = [...fit.theta.keys()],
): DeviationInterval[] {
  const { model } = fit;
  const { tolerance, width } = profileAccuracyFor(model.observations, 1e-9);
  const many = model.observations > MANY_ROWS;
  const q = model.system.termCount;
  const rise = chiSquareQuantile(level, 1);
  return terms.flatMap((held) => {
    const component = fit.varianceComponents[held];
    if (component === undefined) return [];
    const { term, standardDeviation: estimate } = component;
    const whole = model.quadraturePoints > 1 ? new QuadratureCriterion(model) : new LaplaceCriterion(model);
    const criterion = new HeldCriterion(whole, held);
    // Zero is a stationary point in every standard deviation. With many rows others far from it stay where they were best.
    const offZero = (x: Float64Array) =>
      x.map((value, i) => (i < q - 1 && (!many || value < NEAR_ZERO) ? Math.max(value, 0.1) : value));
    const at = Float64Array.of(...fit.theta, ...fit.fixed.working).filter((_, i) => i !== held);
    criterion.heldValue = estimate;
    const minimum = criterion.value(at);
    let last = offZero(at);
    const deviance = (value: number) => {
      criterion.heldValue = value;
      const found = many
        ? minimise(criterion, last, thetaOptions(q - 1, { tolerance }))
        : bestTheta(criterion, last, q - 1, { tolerance });
      last = offZero(found.x.map((value, i) => (i < q - 1 ? Math.abs(value) : value)));
      return found.value;
    };
    const { low, high } = profileLimits(deviance, estimate, minimum, rise, 0.3 * estimate + 0.05, 0, width);
    return { term, interval: { kind: 'interval', low, high, level, method: 'profile likelihood' } };
  });
}
