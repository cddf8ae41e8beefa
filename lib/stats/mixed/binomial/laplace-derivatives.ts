import { crossWithLevels } from '../linear/cross-products';
import { dotProduct } from '../linear-algebra/small-matrix';
import type { Derivatives } from '../optimise/criterion';
import type { LaplaceCriterion } from './laplace-criterion';
import { leverages } from './leverages';

/**
 * Exact gradient of the Laplace criterion and a guess at its curvature, at its last value.
 *
 * The penalised part depends on (theta, b) directly only, u being at its minimum; log|A| depends on them directly and
 * through the weights, and so through u as well. With h the leverages, v = h dw/d(eta), s = A^-1 S Z'v and r the
 * residuals:
 *   d/db       = -2 X'r + X'(v - W Z S s)
 *   d/dtheta_k = (2 / theta_k) sum (1 - (A^-1)_jj)
 *                + sum over the term's levels of [ -2 u z'r + u z'v + s z'r - u z'W Z S s ].
 * Curvature: the penalised part's own in b and across, average information in theta (as in `penalisedDerivatives`).
 */
export function laplaceDerivatives(at: LaplaceCriterion): Derivatives {
  const { model, state, u, theta } = at;
  const { system, columns } = model;
  const q = system.termCount;
  const p = columns.length;
  const size = q + p;
  const rowCount = state.eta.length;
  system.invert();
  const v = leverages(system);
  for (let i = 0; i < rowCount; i++) {
    v[i] = (v[i] as number) * (state.weight[i] as number) * (1 - 2 * (state.mean[i] as number));
  }
  const s = new Float64Array(system.size);
  system.scaledCrossProduct(v, s);
  system.solve(s);
  const response = new Float64Array(rowCount);
  system.addRandomPart(s, response);
  const change = v.map((value, i) => value - (state.weight[i] as number) * (response[i] as number));
  const ones = new Float64Array(rowCount).fill(1);
  const levelResidual = crossWithLevels(system, ones, state.residual);
  const levelChange = crossWithLevels(system, ones, change);
  const gradient = new Float64Array(size);
  const kept = new Float64Array(q);
  for (let j = 0; j < system.size; j++) {
    const k = system.termOf[j] as number;
    const r = levelResidual[j] as number;
    kept[k] = (kept[k] as number) + 1 - system.inverseDiagonal(j);
    gradient[k] =
      (gradient[k] as number) +
      (u[j] as number) * ((levelChange[j] as number) - 2 * r) +
      (s[j] as number) * r;
  }
  for (let k = 0; k < q; k++) {
    if (theta[k] === 0) gradient[k] = 0;
    else gradient[k] = (gradient[k] as number) + (2 * (kept[k] as number)) / (theta[k] as number);
  }
  for (const [k, column] of columns.entries()) {
    gradient[q + k] = dotProduct(column, change) - 2 * dotProduct(column, state.residual);
  }
  return { gradient, curvature: laplaceCurvature(at, levelResidual, gradient) };
}

function laplaceCurvature(
  at: LaplaceCriterion,
  levelResidual: Float64Array,
  gradient: Float64Array,
): Float64Array {
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
    const own = u.map((value, j) => (system.termOf[j] === k ? value : 0));
    // How the linear predictor answers to theta_k: Z_k u_k + Z S A^-1 (E_k Z'r - S Z'W Z_k u_k).
    const direct = new Float64Array(state.eta.length);
    addUnscaled(at, own, direct);
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
    const image = Float64Array.from(own);
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
    const slope = theta[k] === 0 ? 0 : (gradient[k] as number) / (theta[k] as number);
    curvature[k * size + k] = (curvature[k * size + k] as number) + Math.max(slope, 0);
  }
  return curvature;
}

/** L^-1 S Z'W x. */
export function borderColumn(at: LaplaceCriterion, column: Float64Array): Float64Array {
  const { system } = at.model;
  const target = new Float64Array(system.size);
  const weighted = column.map((value, i) => value * (at.state.weight[i] as number));
  system.scaledCrossProduct(weighted, target);
  system.forward(target);
  return target;
}

/** Adds Z x (without scaling) to the rows. */
function addUnscaled(at: LaplaceCriterion, x: Float64Array, rows: Float64Array): void {
  const { system } = at.model;
  const q = system.termCount;
  let pointer = 0;
  for (let row = 0; row < rows.length; row++) {
    let sum = rows[row] as number;
    for (let k = 0; k < q; k++) sum += x[system.positions[pointer++] as number] as number;
    rows[row] = sum;
  }
}
