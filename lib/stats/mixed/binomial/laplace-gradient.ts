import { dotProduct } from '../linear-algebra/small-matrix';
import type { InverseParts } from './inverse-parts';
import type { LaplaceCriterion } from './laplace-criterion';

/**
 * Exact gradient of the Laplace criterion at its last value.
 *
 * The penalised part depends on (theta, b) directly only, u being at its minimum; log|A| depends on them directly and
 * through the weights, and so through u as well. With h the leverages, v = h dw/d(eta), s = A^-1 S Z'v and r the
 * residuals:
 *   d/db       = -2 X'r + X'(v - W Z S s)
 *   d/dtheta_k = (2 / theta_k) sum (1 - (A^-1)_jj)
 *                + sum over the term's levels of [ -2 u z'r + u z'v + s z'r - u z'W Z S s ].
 */
export function laplaceGradient(
  at: LaplaceCriterion,
  inverse: InverseParts,
): {
  readonly gradient: Float64Array;
  /** Z'r by position, which the curvature needs again. */
  readonly levelResidual: Float64Array;
} {
  const { model, state, u, theta } = at;
  const { system, columns } = model;
  const q = system.termCount;
  const p = columns.length;
  const size = q + p;
  const rowCount = state.eta.length;
  const v = inverse.leverages();
  for (let i = 0; i < rowCount; i++) {
    v[i] = (v[i] as number) * (state.weight[i] as number) * (1 - 2 * (state.mean[i] as number));
  }
  const s = new Float64Array(system.size);
  system.scaledCrossProduct(v, s);
  inverse.solve(s);
  const response = new Float64Array(rowCount);
  system.addRandomPart(s, response);
  const change = v;
  for (let i = 0; i < rowCount; i++) {
    change[i] = (v[i] as number) - (state.weight[i] as number) * (response[i] as number);
  }
  const levelResidual = system.crossProduct(state.residual);
  const levelChange = system.crossProduct(change);
  const gradient = new Float64Array(size);
  const kept = new Float64Array(q);
  for (let j = 0; j < system.size; j++) {
    const k = system.termOf[j] as number;
    const r = levelResidual[j] as number;
    kept[k] = (kept[k] as number) + 1 - inverse.diagonal(j);
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
  return { gradient, levelResidual };
}
