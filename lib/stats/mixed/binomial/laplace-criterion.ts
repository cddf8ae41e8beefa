import { COSTLY_TAIL } from '../costly-tail';
import { dotProduct } from '../linear-algebra/small-matrix';
import type { Criterion, Derivatives } from '../optimise/criterion';
import type { BinomialModel } from './binomial-model';
import { exactInverse } from './inverse-parts';
import { laplaceCurvature } from './laplace-curvature';
import { laplaceGradient } from './laplace-gradient';
import { type LogisticState, logisticRows, newLogisticState } from './logistic-rows';

/** Squared length (in A's metric) of a Newton step below which the modes count as found. */
const MODES_FOUND = 1e-18;
const MODES_FOUND_COSTLY = 1e-17;
/** Squared length of a step from which on the modes are far off, and a new factor leads there hardly faster than an old one. */
const FAR_OFF = 10;

/**
 * How much of the squared step may be left before a new factor is made, by the size of the dense tail: the larger it is,
 * the more steps with an old factor one factorisation costs.
 */
function patience(tailSize: number, decrement: number): number {
  if (tailSize > COSTLY_TAIL) return decrement > FAR_OFF ? 0.95 : 0.4;
  return tailSize > 150 ? 0.1 : 0.002;
}

/**
 * -2 log-likelihood of a binomial mixed model by the Laplace approximation, in theta and the working coefficients b:
 *   min over u of [ -2 log p(y | b, u) + |u|^2 ] + log|A|,   A = S Z'WZ S + I at the minimum,
 * binomial coefficients included. The minimum (the conditional modes) is found by penalised iteratively reweighted least
 * squares (Bates et al., lme4; Pinheiro & Chao 2006, J Comput Graph Stat 15, 58-81, from memory), starting from the last
 * one found; while steps with an old factor still converge fast, no new one is made.
 */
export class LaplaceCriterion implements Criterion {
  readonly dimension: number;
  state: LogisticState;
  u: Float64Array;
  theta: Float64Array;
  b: Float64Array;
  /** The part of the value that is not log|A|. */
  penalised = 0;
  private factored = false;
  /** Where value and factor were last made. */
  private lastX: Float64Array | undefined;
  private trial: LogisticState;
  private readonly fixedPart: Float64Array;

  constructor(readonly model: BinomialModel) {
    const q = model.system.termCount;
    this.dimension = q + model.columns.length;
    this.state = newLogisticState(model.rows.events.length);
    this.trial = newLogisticState(model.rows.events.length);
    this.fixedPart = new Float64Array(model.rows.events.length);
    this.u = new Float64Array(model.system.size);
    this.theta = new Float64Array(q);
    this.b = new Float64Array(model.columns.length);
  }

  value(x: Float64Array): number {
    const { system, constant } = this.model;
    if (!this.factoredAt(x)) {
      this.lastX = undefined;
      if (!this.moveTo(x) || !this.refactor()) return Number.POSITIVE_INFINITY;
      this.lastX = x.slice();
    }
    return this.penalised + constant + system.logDeterminant();
  }

  /** Sets theta and b and finds the modes there, possibly with an old factor. False when they are not found. */
  moveTo(x: Float64Array): boolean {
    const { system } = this.model;
    const q = system.termCount;
    this.lastX = undefined;
    this.theta = x.slice(0, q);
    this.b = x.slice(q);
    this.setFixedPart();
    system.setScale(this.theta);
    return this.findModes();
  }

  private factoredAt(x: Float64Array): boolean {
    const last = this.lastX;
    return last?.length === x.length && last.every((value, i) => value === x[i]);
  }

  derivatives(): Derivatives {
    const { gradient, levelResidual } = laplaceGradient(this, exactInverse(this.model.system));
    return { gradient, curvature: laplaceCurvature(this, levelResidual) };
  }

  /** The gradient alone, for differences of it. */
  gradient(): Float64Array {
    return laplaceGradient(this, exactInverse(this.model.system)).gradient;
  }

  /** Moves u to the conditional modes. False when it does not get there. */
  private findModes(): boolean {
    const { system } = this.model;
    const goal = system.plan.tailSize > COSTLY_TAIL ? MODES_FOUND_COSTLY : MODES_FOUND;
    let value = this.evaluate(this.u, this.state);
    if (!Number.isFinite(value)) {
      this.u.fill(0);
      value = this.evaluate(this.u, this.state);
      if (!Number.isFinite(value)) return false;
    }
    let previous = Number.POSITIVE_INFINITY;
    const gradient = new Float64Array(system.size);
    let fresh = false;
    for (let round = 0; round < 100; round++) {
      system.scaledCrossProduct(this.state.residual, gradient);
      for (let j = 0; j < gradient.length; j++) {
        gradient[j] = (gradient[j] as number) - (this.u[j] as number);
      }
      if (!this.factored) {
        if (!this.refactor()) return false;
        fresh = true;
      }
      const step = gradient.slice();
      system.solve(step);
      const decrement = dotProduct(gradient, step);
      if (decrement < goal) {
        this.penalised = value;
        return true;
      }
      const slow = decrement > patience(system.plan.tailSize, decrement) * previous;
      if (!fresh && slow) {
        // The old factor no longer leads anywhere fast: make a new one and take this step again.
        this.factored = false;
        previous = Number.POSITIVE_INFINITY;
        continue;
      }
      previous = decrement;
      const next = this.stepTo(step, value);
      if (next === undefined) {
        if (fresh) {
          // Rounding is all that is left.
          this.penalised = value;
          return decrement < 1e-8;
        }
        this.factored = false;
        continue;
      }
      value = next;
      fresh = false;
    }
    this.penalised = value;
    return false;
  }

  /** Takes the longest of 1, 1/2, 1/4 ... of a step that lowers the value; undefined when none does. */
  private stepTo(step: Float64Array, value: number): number | undefined {
    for (let length = 1; length > 1e-9; length /= 2) {
      const next = new Float64Array(step.length);
      for (let j = 0; j < next.length; j++) next[j] = (this.u[j] as number) + length * (step[j] as number);
      const nextValue = this.evaluate(next, this.trial);
      if (nextValue <= value + 1e-13 * (1 + Math.abs(value))) {
        this.u = next;
        for (const key of ['eta', 'mean', 'weight', 'residual'] as const)
          this.state[key].set(this.trial[key]);
        return nextValue;
      }
    }
    return undefined;
  }

  private evaluate(u: Float64Array, state: LogisticState): number {
    const { system, rows } = this.model;
    state.eta.set(this.fixedPart);
    system.addRandomPart(u, state.eta);
    return logisticRows(rows, state) + dotProduct(u, u);
  }

  /** Offset + X b. */
  private setFixedPart(): void {
    const { columns, rows } = this.model;
    const { fixedPart } = this;
    fixedPart.set(rows.offset);
    for (let k = 0; k < columns.length; k++) {
      const column = columns[k] as Float64Array;
      const value = this.b[k] as number;
      for (let i = 0; i < column.length; i++) {
        fixedPart[i] = (fixedPart[i] as number) + value * (column[i] as number);
      }
    }
  }

  private refactor(): boolean {
    this.model.system.setWeights(this.state.weight);
    this.factored = this.model.system.refactor();
    return this.factored;
  }
}
