import type { Criterion, Derivatives } from '../optimise/criterion';
import type { RandomSystem } from '../random-system';
import type { CrossProducts } from './cross-products';
import { penalisedDerivatives } from './penalised-derivatives';
import { type PenalisedSolution, penalisedSolution } from './penalised-solution';

/**
 * -2 log-likelihood of a linear mixed model in the standard deviations themselves (random terms s_k = theta_k sigma, and
 * log sigma), one of them held at a given value: what a profile of that one is minimised over.
 *
 *   log|A| + m log(2 pi sigma^2) + r^2 / sigma^2 [+ log|X'V^-1 X| for REML]
 *
 * Coordinates: s_1 ... s_q, log sigma, without the held one (`held` = q holds sigma).
 */
export class HeldDeviationCriterion implements Criterion {
  readonly dimension: number;
  /** The standard deviation held fixed, in the units of the response. */
  heldValue = 0;
  private readonly degrees: number;
  private at: { theta: Float64Array; sigma: number; solution: PenalisedSolution } | undefined;

  constructor(
    private readonly system: RandomSystem,
    private readonly cross: CrossProducts,
    private readonly restricted: boolean,
    private readonly held: number,
  ) {
    this.dimension = system.termCount;
    this.degrees = cross.observations - (restricted ? cross.p : 0);
  }

  value(x: Float64Array): number {
    const q = this.system.termCount;
    const sigma = this.held === q ? this.heldValue : Math.exp(x[q - 1] as number);
    const deviations = Array.from(x.subarray(0, this.held === q ? q : q - 1));
    if (this.held < q) deviations.splice(this.held, 0, this.heldValue);
    const theta = Float64Array.from(deviations, (value) => value / sigma);
    const solution = sigma > 0 ? penalisedSolution(this.system, this.cross, theta) : undefined;
    this.at = solution && { theta, sigma, solution };
    if (!solution) return Number.POSITIVE_INFINITY;
    return (
      solution.logDetRandom +
      (this.restricted ? solution.logDetFixed : 0) +
      this.degrees * Math.log(2 * Math.PI * sigma ** 2) +
      solution.squares / sigma ** 2 +
      this.cross.weightConstant
    );
  }

  derivatives(): Derivatives {
    if (!this.at) throw new Error('derivatives were asked for where the value is not finite');
    const { theta, sigma, solution } = this.at;
    const q = this.system.termCount;
    const parts = penalisedDerivatives(this.system, theta, solution, this.restricted);
    // In (theta, log sigma) first, then through theta_k = s_k / sigma.
    const size = q + 1;
    const slope = new Float64Array(size);
    const inner = new Float64Array(size * size);
    for (let k = 0; k < q; k++) {
      const own = (parts.logDeterminants[k] as number) + (parts.squares[k] as number) / sigma ** 2;
      slope[k] = own;
      for (let l = 0; l < q; l++) inner[k * size + l] = (parts.information[k * q + l] as number) / sigma ** 2;
      const even = theta[k] === 0 ? 0 : Math.max(own / (theta[k] as number), 0);
      inner[k * size + k] = (inner[k * size + k] as number) + even;
      const mixed = (-2 * (parts.squares[k] as number)) / sigma ** 2;
      inner[k * size + q] = mixed;
      inner[q * size + k] = mixed;
    }
    slope[q] = 2 * this.degrees - (2 * solution.squares) / sigma ** 2;
    inner[q * size + q] = (4 * solution.squares) / sigma ** 2;
    const directions = this.directions(theta, sigma);
    const gradient = Float64Array.from(directions, (d) =>
      d.reduce((sum, part, i) => sum + part * (slope[i] as number), 0),
    );
    const curvature = new Float64Array(q * q);
    for (let a = 0; a < q; a++) {
      for (let b = 0; b < q; b++) {
        let sum = 0;
        for (let i = 0; i < size; i++) {
          for (let j = 0; j < size; j++) {
            sum +=
              (directions[a]?.[i] as number) *
              (inner[i * size + j] as number) *
              (directions[b]?.[j] as number);
          }
        }
        curvature[a * q + b] = sum;
      }
    }
    return { gradient, curvature };
  }

  /** d(theta, log sigma) / d(coordinate) for each coordinate that is free. */
  private directions(theta: Float64Array, sigma: number): Float64Array[] {
    const q = this.system.termCount;
    const all: Float64Array[] = [];
    for (let k = 0; k < q; k++) {
      const direction = new Float64Array(q + 1);
      direction[k] = 1 / sigma;
      if (k !== this.held) all.push(direction);
    }
    if (this.held !== q) {
      const direction = theta.map((value) => -value);
      all.push(Float64Array.of(...direction, 1));
    }
    return all;
  }
}
