import { dotProduct } from '../linear-algebra/small-matrix';
import type { LaplaceCriterion } from './laplace-criterion';

/**
 * A guess at the curvature of the Laplace criterion at its last value, row-major in (theta, b): the penalised part's own in b
 * and across, and average information in theta (as in `penalisedDerivatives`).
 */
export function laplaceCurvature(at: LaplaceCriterion, levelResidual: Float64Array): Float64Array {
  const { model, state, u, theta } = at;
  const { system, columns } = model;
  const q = system.termCount;
  const p = columns.length;
  const size = q + p;
  const curvature = new Float64Array(size * size);
  const set = (i: number, j: number, value: number) => {
    curvature[i * size + j] = value;
    curvature[j * size + i] = value;
  };
  const border = columns.map((column) => borderColumn(at, column));
  const weighted = new Float64Array(state.eta.length);
  for (const [k, column] of columns.entries()) {
    for (let i = 0; i < column.length; i++) weighted[i] = (state.weight[i] as number) * (column[i] as number);
    for (let l = 0; l <= k; l++) {
      const own = dotProduct(weighted, columns[l] as Float64Array);
      const shared = dotProduct(border[k] as Float64Array, border[l] as Float64Array);
      set(q + k, q + l, 2 * (own - shared));
    }
  }
  for (let k = 0; k < q; k++) {
    const own = system.ofTerm(k, u);
    // How the linear predictor answers to theta_k: Z_k u_k + Z S A^-1 (E_k Z'r - S Z'W Z_k u_k).
    const direct = system.valuesOfTerm(k, u);
    const pull = new Float64Array(system.size);
    for (let i = 0; i < direct.length; i++) direct[i] = (direct[i] as number) * (state.weight[i] as number);
    system.scaledCrossProduct(direct, pull);
    for (let j = 0; j < pull.length; j++) {
      const residual = system.termOf[j] === k ? (levelResidual[j] as number) : 0;
      pull[j] = residual - (pull[j] as number);
    }
    system.forward(pull);
    for (const [l, column] of columns.entries()) {
      set(k, q + l, 2 * (dotProduct(column, direct) + dotProduct(border[l] as Float64Array, pull)));
    }
    const image = own.slice();
    system.solve(image);
    const information = new Float64Array(q);
    for (let j = 0; j < image.length; j++) {
      const l = system.termOf[j] as number;
      const part = (u[j] as number) * ((own[j] as number) - (image[j] as number));
      information[l] = (information[l] as number) + part;
    }
    for (let l = 0; l < q; l++) {
      const product = (theta[k] as number) * (theta[l] as number);
      set(k, l, product === 0 ? 0 : (4 * (information[l] as number)) / product);
    }
  }
  return curvature;
}

/** L^-1 S Z'W x. */
export function borderColumn(at: LaplaceCriterion, column: Float64Array): Float64Array {
  const { system } = at.model;
  const target = new Float64Array(system.size);
  const weighted = new Float64Array(column.length);
  for (let i = 0; i < weighted.length; i++) {
    weighted[i] = (column[i] as number) * (at.state.weight[i] as number);
  }
  system.scaledCrossProduct(weighted, target);
  system.forward(target);
  return target;
}
