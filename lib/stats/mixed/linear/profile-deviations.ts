import { chiSquareQuantile } from '../../distribution/chi-square';
import { profileAccuracyFor } from '../costly-tail';
import { minimise } from '../optimise/minimise';
import { profileLimits } from '../profile-limits';
import type { DeviationInterval } from '../variance-interval';
import type { LinearMixedFit } from './fit-linear';
import { HeldDeviationCriterion } from './held-deviation-criterion';

/**
 * Profile-likelihood intervals of the standard deviations of a linear mixed model, from the criterion the fit minimised
 * (fit by 'ML' for intervals of the ordinary likelihood). A lower limit of 0 means that the data do not rule out a
 * variance of 0. With few levels (under about 5) the upper limit is large, and honestly so.
 *
 * @param level confidence, 0.95 by default.
 * @param asked the places of the terms asked about, the residual's after the last; all by default.
 */
export function profileDeviations(
  fit: LinearMixedFit,
  level = 0.95,
  asked: readonly number[] = [...fit.theta.keys(), fit.theta.length],
): DeviationInterval[] {
  const { system, cross, terms } = fit.model;
  const q = system.termCount;
  const sigma = fit.residualStandardDeviation;
  const estimates = [...fit.varianceComponents.map((part) => part.standardDeviation), sigma];
  const rise = chiSquareQuantile(level, 1);
  const { tolerance, width } = profileAccuracyFor(fit.observations, 1e-10);
  return asked.map((held) => {
    const estimate = estimates[held] ?? 0;
    const criterion = new HeldDeviationCriterion(system, cross, fit.restricted, held);
    // Zero is a stationary point in every standard deviation, so the search never starts there.
    const start = Float64Array.from(
      [...estimates.slice(0, q).map((value) => Math.max(value, 0.1 * sigma)), Math.log(sigma)].filter(
        (_, i) => i !== held,
      ),
    );
    const atEstimate = Float64Array.from(
      [...estimates.slice(0, q), Math.log(sigma)].filter((_, i) => i !== held),
    );
    let last = start;
    const deviance = (value: number) => {
      criterion.heldValue = value;
      const options = {
        tolerance,
        longestStep: (x: number, i: number) => (held < q && i === q - 1 ? 1 : sigma + 2 * Math.abs(x)),
      };
      const found = minimise(criterion, last, options);
      last = found.x.map((x, i) => (held < q && i === q - 1 ? x : Math.max(Math.abs(x), 0.1 * sigma)));
      return found.value;
    };
    criterion.heldValue = estimate;
    const minimum = criterion.value(atEstimate);
    const firstStep = held === q ? sigma / Math.sqrt(2 * cross.observations) : 0.3 * estimate + 0.05 * sigma;
    const { low, high } = profileLimits(deviance, estimate, minimum, rise, firstStep, 0, width);
    return {
      term: terms.random[held]?.name,
      interval: { kind: 'interval', low, high, level, method: 'profile likelihood' },
    };
  });
}
