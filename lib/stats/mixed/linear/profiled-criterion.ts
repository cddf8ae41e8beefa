import type { Criterion, Derivatives } from '../optimise/criterion';
import type { RandomSystem } from '../random-system';
import type { CrossProducts } from './cross-products';
import { penalisedDerivatives } from './penalised-derivatives';
import { type PenalisedSolution, penalisedSolution } from './penalised-solution';

/**
 * -2 log-likelihood of a linear mixed model as a function of theta alone, the fixed effects and sigma at their best:
 *   log|A| + m (1 + log(2 pi r^2 / m)) [+ log|X'V^-1 X| for REML], m = n (ML) or n - p (REML).
 * For REML it is on the scale of the working basis; see `logDeterminantOfBasis` for the constant to the scale of X.
 */
export class ProfiledCriterion implements Criterion {
  readonly dimension: number;
  readonly degrees: number;
  solution: PenalisedSolution | undefined;
  private theta: Float64Array;

  constructor(
    readonly system: RandomSystem,
    readonly cross: CrossProducts,
    readonly restricted: boolean,
  ) {
    this.dimension = system.termCount;
    this.degrees = cross.observations - (restricted ? cross.p : 0);
    this.theta = new Float64Array(this.dimension);
  }

  value(theta: Float64Array): number {
    const same = this.solution !== undefined && theta.every((value, k) => value === this.theta[k]);
    this.theta = theta.slice();
    const solution = same ? this.solution : penalisedSolution(this.system, this.cross, theta);
    this.solution = solution;
    if (!solution || !(solution.squares > 0)) return Number.POSITIVE_INFINITY;
    const m = this.degrees;
    return (
      solution.logDetRandom +
      (this.restricted ? solution.logDetFixed : 0) +
      m * (1 + Math.log((2 * Math.PI * solution.squares) / m)) +
      this.cross.weightConstant
    );
  }

  derivatives(): Derivatives {
    const { theta, solution, dimension: q, degrees: m } = this;
    if (!solution) throw new Error('derivatives were asked for where the value is not finite');
    const parts = penalisedDerivatives(this.system, theta, solution, this.restricted);
    const sigma2 = solution.squares / m;
    const gradient = parts.squares.map((slope, k) => (parts.logDeterminants[k] as number) + slope / sigma2);
    const curvature = new Float64Array(q * q);
    for (let k = 0; k < q; k++) {
      for (let l = 0; l < q; l++) {
        const shared = ((parts.squares[k] as number) * (parts.squares[l] as number)) / (sigma2 * sigma2 * m);
        curvature[k * q + l] = (parts.information[k * q + l] as number) / sigma2 - shared;
      }
    }
    return { gradient, curvature };
  }
}
