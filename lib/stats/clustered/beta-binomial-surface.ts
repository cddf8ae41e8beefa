import { proportion } from '../distribution/beta-log-odds';
import { elementAt } from '../element-at';
import { clusterLikelihood } from './beta-binomial-likelihood';
import type { Surface } from './newton-maximum';

export type BetaBinomialData = {
  readonly events: readonly number[];
  readonly trials: readonly number[];
  /** One row of covariates per cluster. */
  readonly design: readonly (readonly number[])[];
};

/**
 * The beta-binomial log-likelihood over (coefficients, logit rho), with logit mu = design * coefficients and
 * theta = rho / (1 - rho) = exp(logit rho). With `dispersed` false rho is held at 0 and there are only coefficients.
 */
export function betaBinomialSurface(
  data: BetaBinomialData,
  dispersed: boolean,
): (at: Float64Array) => Surface {
  return (at) => {
    const covariates = data.design[0]?.length ?? 0;
    const size = covariates + (dispersed ? 1 : 0);
    const theta = dispersed ? Math.exp(elementAt(at, covariates)) : 0;
    const gradient = new Float64Array(size);
    const hessian = new Float64Array(size * size);
    let value = 0;
    data.design.forEach((row, cluster) => {
      let eta = 0;
      row.forEach((covariate, index) => {
        eta += covariate * elementAt(at, index);
      });
      const mu = proportion(eta);
      const slope = mu * (1 - mu);
      const part = clusterLikelihood(
        elementAt(data.events, cluster),
        elementAt(data.trials, cluster),
        mu,
        theta,
      );
      value += part.value;
      const etaEta = part.muMu * slope * slope + part.mu * slope * (1 - 2 * mu);
      const etaRho = part.muTheta * slope * theta;
      // The last place stands for logit rho, as a covariate of its own equation.
      for (let i = 0; i < size; i += 1) {
        const ofRho = i === covariates;
        const own = ofRho ? 1 : elementAt(row, i);
        gradient[i] = elementAt(gradient, i) + own * (ofRho ? part.theta * theta : part.mu * slope);
        for (let j = 0; j < size; j += 1) {
          const otherOfRho = j === covariates;
          const other = otherOfRho ? 1 : elementAt(row, j);
          const both = part.thetaTheta * theta * theta + part.theta * theta;
          const curvature = ofRho && otherOfRho ? both : ofRho || otherOfRho ? etaRho : etaEta;
          hessian[i * size + j] = elementAt(hessian, i * size + j) + own * other * curvature;
        }
      }
    });
    return { value, gradient, hessian };
  };
}
