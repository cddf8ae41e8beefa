import type { LinearModel } from './linear-model';

/** Fitted values of all original rows from the working coefficients (past the baseline) and u. */
export function fittedRows(
  model: LinearModel,
  b: Float64Array,
  u: Float64Array,
): { fitted: Float64Array; residualSquares: number } {
  const { columns, baseline, system, classes, response, offset, weights } = model;
  const classFit = new Float64Array(classes.count);
  for (const [k, column] of columns.entries()) {
    const value = (b[k] as number) + (baseline[k] as number);
    for (let i = 0; i < classFit.length; i++) {
      classFit[i] = (classFit[i] as number) + value * (column[i] as number);
    }
  }
  system.addRandomPart(u, classFit);
  const fitted = new Float64Array(response.length);
  let residualSquares = 0;
  for (let row = 0; row < fitted.length; row++) {
    const value = classFit[classes.classOf[row] as number] as number;
    residualSquares += (weights[row] as number) * ((response[row] as number) - value) ** 2;
    fitted[row] = value + (offset?.[row] ?? 0);
  }
  return { fitted, residualSquares };
}
