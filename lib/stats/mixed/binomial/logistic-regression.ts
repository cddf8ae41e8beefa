import { dotProduct, solveWithFactor } from '../linear-algebra/small-matrix';
import { positiveFactor } from '../optimise/positive-factor';
import { type BinomialRows, logisticRows, newLogisticState } from './logistic-rows';

export type LogisticRegression = {
  /** Coefficients in the working basis. */
  readonly b: Float64Array;
  readonly minusTwoLogLikelihood: number;
  /** The last Newton step: the direction in which the coefficients still move, when they run away. */
  readonly lastStep: Float64Array;
  /** Linear predictor of each row. */
  readonly eta: Float64Array;
};

/** Log odds (1 in 500 million) from which a row counts as running away. */
const RUNAWAY = 20;

/**
 * Logistic regression without random effects by Newton's method, over the working basis. Where the likelihood has no
 * maximum (separation) it stops after a fixed number of steps or log
 * odds of 20, each step still moving by about 1 on the logit.
 */
export function logisticRegression(
  columns: readonly Float64Array[],
  rows: BinomialRows,
  steps = 40,
): LogisticRegression {
  const p = columns.length;
  const n = rows.events.length;
  let b = new Float64Array(p);
  let lastStep = new Float64Array(p);
  const state = newLogisticState(n);
  const evaluate = (at: Float64Array) => {
    state.eta.set(rows.offset);
    for (const [k, column] of columns.entries()) {
      const value = at[k] as number;
      for (let i = 0; i < n; i++) state.eta[i] = (state.eta[i] as number) + value * (column[i] as number);
    }
    return logisticRows(rows, state);
  };
  let value = evaluate(b);
  for (let round = 0; round < steps && p > 0; round++) {
    const information = new Float64Array(p * p);
    const step = Float64Array.from(columns, (column) => dotProduct(column, state.residual));
    const weighted = new Float64Array(n);
    for (const [k, column] of columns.entries()) {
      for (let i = 0; i < n; i++) weighted[i] = (state.weight[i] as number) * (column[i] as number);
      for (let l = 0; l <= k; l++) {
        const entry = dotProduct(weighted, columns[l] as Float64Array);
        information[k * p + l] = entry;
        information[l * p + k] = entry;
      }
    }
    const slope = Float64Array.from(step);
    solveWithFactor(positiveFactor(information, p).factor, p, step);
    const gain = dotProduct(slope, step);
    lastStep = step;
    let length = 1;
    for (let tries = 0; tries < 30; tries++) {
      const next = b.map((at, k) => at + length * (step[k] as number));
      const nextValue = evaluate(next);
      if (nextValue <= value + 1e-12 * (1 + Math.abs(value))) {
        b = next;
        value = nextValue;
        break;
      }
      length /= 2;
    }
    // Far out on the logit nothing more is learnt, and the equations begin to lose their digits.
    if (gain < 1e-22 || state.eta.some((eta) => Math.abs(eta) > RUNAWAY)) break;
  }
  value = evaluate(b);
  return { b, minusTwoLogLikelihood: value, lastStep, eta: Float64Array.from(state.eta) };
}
