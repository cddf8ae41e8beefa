import type { Criterion, Derivatives } from '../optimise/criterion';
import type { BinomialModel } from './binomial-model';
import { normalQuadrature } from './gauss-hermite';
import { LaplaceCriterion } from './laplace-criterion';

/** Step of the central differences of (quadrature - Laplace), a small and smooth function. */
const STEP = 1e-4;

/**
 * -2 log-likelihood by adaptive Gauss-Hermite quadrature, for exactly one random term: each level's integral over its u is
 * taken at nodes centred on the conditional mode and scaled by the curvature there (Liu & Pierce 1994, Biometrika 81,
 * 624-629, from memory). With one node it is the Laplace approximation. All constants are counted, so values for
 * different numbers of nodes are comparable.
 *
 * The gradient is the Laplace criterion's exact one plus differences of what quadrature adds to it.
 */
export class QuadratureCriterion implements Criterion {
  readonly dimension: number;
  readonly laplace: LaplaceCriterion;
  private readonly nodes: Float64Array;
  private readonly logWeights: Float64Array;
  private x = new Float64Array(0);

  constructor(readonly model: BinomialModel) {
    this.laplace = new LaplaceCriterion(model);
    this.dimension = this.laplace.dimension;
    const { nodes, weights } = normalQuadrature(model.quadraturePoints);
    this.nodes = nodes;
    this.logWeights = weights.map((weight, i) => Math.log(weight) + (nodes[i] as number) ** 2 / 2);
  }

  value(x: Float64Array): number {
    this.x = Float64Array.from(x);
    const laplace = this.laplace.value(x);
    return Number.isFinite(laplace) ? laplace + this.correction() : laplace;
  }

  derivatives(): Derivatives {
    const { gradient, curvature } = this.laplace.derivatives();
    return { gradient: this.corrected(gradient), curvature };
  }

  gradient(): Float64Array {
    return this.corrected(this.laplace.gradient());
  }

  private corrected(gradient: Float64Array): Float64Array {
    const x = this.x;
    const full = gradient.map((slope, i) => {
      if (i === 0 && x[0] === 0) return 0;
      const shifted = (shift: number) => {
        this.laplace.value(x.map((value, k) => (k === i ? value + shift : value)));
        return this.correction();
      };
      const step = i === 0 ? Math.min(STEP, Math.abs(x[0] as number) / 2) : STEP;
      return slope + (shifted(step) - shifted(-step)) / (2 * step);
    });
    this.laplace.value(x);
    return full;
  }

  /** -2 log of (quadrature / Laplace), summed over levels, at the Laplace criterion's last value. */
  private correction(): number {
    const { system, rows } = this.model;
    const { u, state } = this.laplace;
    const theta = this.laplace.theta[0] as number;
    if (theta === 0) return 0;
    const count = this.nodes.length;
    // Conditional on the fixed part levels are independent, and A is diagonal.
    const curvature = new Float64Array(system.size).fill(1);
    for (let row = 0; row < system.rowCount; row++) {
      const j = system.positions[row] as number;
      curvature[j] = (curvature[j] as number) + theta * theta * (state.weight[row] as number);
    }
    const logTerms = new Float64Array(system.size * count);
    for (let j = 0; j < system.size; j++) {
      const spread = 1 / Math.sqrt(curvature[j] as number);
      const mode = u[j] as number;
      for (let k = 0; k < count; k++) {
        const at = mode + spread * (this.nodes[k] as number);
        logTerms[j * count + k] = (this.logWeights[k] as number) - (at * at - mode * mode) / 2;
      }
    }
    for (let row = 0; row < system.rowCount; row++) {
      const j = system.positions[row] as number;
      const spread = 1 / Math.sqrt(curvature[j] as number);
      const eta = state.eta[row] as number;
      const n = rows.trials[row] as number;
      const y = rows.events[row] as number;
      const centre = logLikelihood(eta, y, n);
      for (let k = 0; k < count; k++) {
        const index = j * count + k;
        const there = logLikelihood(eta + theta * spread * (this.nodes[k] as number), y, n);
        logTerms[index] = (logTerms[index] as number) + there - centre;
      }
    }
    let total = 0;
    for (let j = 0; j < system.size; j++) {
      const own = logTerms.subarray(j * count, (j + 1) * count);
      const largest = own.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY);
      total += largest + Math.log(own.reduce((sum, value) => sum + Math.exp(value - largest), 0));
    }
    return -2 * total;
  }
}

function logLikelihood(eta: number, events: number, trials: number): number {
  const small = Math.log1p(Math.exp(-Math.abs(eta)));
  return eta >= 0 ? -(trials - events) * eta - trials * small : events * eta - trials * small;
}
