import { MANY_ROWS } from '../costly-tail';
import { deviationIntervals, type EstimatedDeviation } from '../deviation-intervals';
import type { DeviationInterval } from '../variance-interval';
import { deviationCovariance } from './deviation-covariance';
import type { LinearMixedFit } from './fit-linear';
import { profileDeviations } from './profile-deviations';

/**
 * Intervals of the standard deviations of a linear mixed model, the residual's last. See `deviationIntervals`.
 *
 * @param level confidence, 0.95 by default.
 */
export function linearDeviations(fit: LinearMixedFit, level = 0.95): DeviationInterval[] {
  const errors = fit.observations > MANY_ROWS ? deviationErrors(fit) : [];
  const residual = {
    term: undefined,
    standardDeviation: fit.residualStandardDeviation,
    levels: fit.observations,
  };
  const deviations = [...fit.varianceComponents, residual].map(
    ({ term, standardDeviation, levels }, place): EstimatedDeviation => ({
      ...{ term, estimate: standardDeviation, levels },
      standardError: errors[place],
    }),
  );
  return deviationIntervals(deviations, fit.observations, level, (places) =>
    profileDeviations(fit, level, places),
  );
}

/** Standard errors of theta sigma of each term, undefined where that is 0, and of sigma. */
function deviationErrors(fit: LinearMixedFit): (number | undefined)[] {
  const { active, spread } = deviationCovariance(fit);
  const size = active.length + 1;
  const sigma = fit.residualStandardDeviation;
  const covariance = (i: number, j: number) => spread[i * size + j] as number;
  const last = active.length;
  const ofTerms = Array.from(fit.theta, (theta, term) => {
    const at = active.indexOf(term);
    if (at === -1) return undefined;
    const variance =
      sigma ** 2 * covariance(at, at) +
      theta ** 2 * covariance(last, last) +
      2 * theta * sigma * covariance(at, last);
    return Math.sqrt(Math.max(0, variance));
  });
  return [...ofTerms, Math.sqrt(covariance(last, last))];
}
