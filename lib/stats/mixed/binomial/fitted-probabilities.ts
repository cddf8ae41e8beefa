import type { BinomialModel } from './binomial-model';

/**
 * Fitted probability of every original row, random effects included. Rows left out because their group has no events (or
 * nothing but events) have the limit, 0 (or 1).
 */
export function fittedProbabilities(model: BinomialModel, b: Float64Array, u: Float64Array): Float64Array {
  const { rows, columns, system, classes, used, terms } = model;
  const eta = Float64Array.from(rows.offset);
  for (const [k, column] of columns.entries()) {
    for (let i = 0; i < eta.length; i++)
      eta[i] = (eta[i] as number) + (b[k] as number) * (column[i] as number);
  }
  system.addRandomPart(u, eta);
  const fitted = new Float64Array(terms.rowCount);
  for (let at = 0; at < used.length; at++) {
    fitted[used[at] as number] = 1 / (1 + Math.exp(-(eta[classes.classOf[at] as number] as number)));
  }
  return fitted;
}
