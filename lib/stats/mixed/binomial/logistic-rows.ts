/** Distinct rows of a binomial model: events and trials summed over the rows put together. */
export type BinomialRows = {
  readonly events: Float64Array;
  readonly trials: Float64Array;
  readonly offset: Float64Array;
};

/** Fitted quantities of every row at a linear predictor, written in place by `logisticRows`. */
export type LogisticState = {
  readonly eta: Float64Array;
  /** Probability of an event. */
  readonly mean: Float64Array;
  /** trials p (1 - p). */
  readonly weight: Float64Array;
  /** events - trials p. */
  readonly residual: Float64Array;
};

export function newLogisticState(rows: number): LogisticState {
  return {
    eta: new Float64Array(rows),
    mean: new Float64Array(rows),
    weight: new Float64Array(rows),
    residual: new Float64Array(rows),
  };
}

/** -2 log-likelihood without binomial coefficients at state.eta; fills in the rest of the state. */
export function logisticRows(rows: BinomialRows, state: LogisticState): number {
  const { events, trials } = rows;
  const { eta, mean, weight, residual } = state;
  let sum = 0;
  for (let i = 0; i < eta.length; i++) {
    const x = eta[i] as number;
    const n = trials[i] as number;
    const y = events[i] as number;
    // exp of minus the absolute value never overflows, and keeps both tails exact.
    const small = Math.exp(-Math.abs(x));
    const odds = 1 / (1 + small);
    const p = x >= 0 ? odds : small * odds;
    const other = x >= 0 ? small * odds : odds;
    mean[i] = p;
    weight[i] = n * p * other;
    residual[i] = x >= 0 ? n * other - (n - y) : y - n * p;
    sum += n * Math.log1p(small) + (x >= 0 ? (n - y) * x : -y * x);
  }
  return 2 * sum;
}
