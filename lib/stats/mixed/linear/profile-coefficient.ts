import { chiSquareQuantile } from '../../distribution/chi-square';
import type { CannotCompute, Interval } from '../../outcome';
import { contrastOf, notEstimable, unit } from '../coefficients';
import { bestTheta } from '../optimise/best-theta';
import { profileLimits } from '../profile-limits';
import type { CrossProducts } from './cross-products';
import { fitLinearModel, type LinearMixedFit } from './fit-linear';
import { ProfiledCriterion } from './profiled-criterion';

/**
 * Profile-likelihood interval (ordinary likelihood) of a contrast l'beta of a linear mixed model's coefficients.
 * With few clusters it is somewhat too narrow, since it takes the likelihood's own curvature for the truth; the t
 * interval with Satterthwaite's degrees of freedom is the one to show.
 *
 * @param l one number per coefficient, or the name of one coefficient.
 */
export function profileCoefficient(
  fit: LinearMixedFit,
  l: ArrayLike<number> | string,
  level = 0.95,
): Interval | CannotCompute {
  const names = fit.coefficients.map(({ name }) => name);
  const contrast = typeof l === 'string' ? unit(names.length, names.indexOf(l)) : l;
  const likelihood = fit.restricted ? fitLinearModel(fit.model, 'ML') : fit;
  if (likelihood.kind === 'cannot-compute') return likelihood;
  const found = contrastOf(likelihood.fixed, contrast);
  if (!found) return notEstimable(typeof l === 'string' ? l : 'this contrast');
  const { system, cross, baseline } = fit.model;
  const along = Math.hypot(...found.c);
  const direction = found.c.map((value) => value / along);
  const rotated = rotateLast(cross, direction);
  let start = likelihood.theta.map((value) => Math.max(value, 0.3));
  const q = system.termCount;
  const base = direction.reduce((sum, value, k) => sum + value * (baseline[k] as number), 0);
  const deviance = (value: number) => {
    const criterion = new ProfiledCriterion(system, holdLast(rotated, value / along - base), false);
    const minimum = bestTheta(criterion, start, q, { tolerance: 1e-10 });
    start = minimum.x.map((theta) => Math.max(theta, 0.3));
    return minimum.value;
  };
  const { low, high } = profileLimits(
    deviance,
    found.estimate,
    likelihood.minusTwoLogLikelihood,
    chiSquareQuantile(level, 1),
    found.standardError,
  );
  return { kind: 'interval', low, high, level, method: 'profile likelihood' };
}

/** Turns the working basis (a Householder reflection) so that its last coordinate lies along `direction`. */
function rotateLast(cross: CrossProducts, direction: Float64Array): CrossProducts {
  const { p } = cross;
  const v = Float64Array.from(direction);
  const sign = (v[p - 1] as number) > 0 ? 1 : -1;
  v[p - 1] = (v[p - 1] as number) + sign;
  const scale = 2 / v.reduce((sum, value) => sum + value * value, 0);
  // Column j of H = -sign (I - scale v v'), whose last column is `direction`.
  const h = (i: number, j: number) =>
    -sign * ((i === j ? 1 : 0) - scale * (v[i] as number) * (v[j] as number));
  const zx = Array.from({ length: p }, (_, j) => {
    const column = new Float64Array(cross.zy.length);
    for (const [i, source] of cross.zx.entries()) {
      for (let at = 0; at < column.length; at++) {
        column[at] = (column[at] as number) + h(i, j) * (source[at] as number);
      }
    }
    return column;
  });
  const half = new Float64Array(p * p);
  const xx = new Float64Array(p * p);
  for (let i = 0; i < p; i++) {
    for (let j = 0; j < p; j++) {
      for (let k = 0; k < p; k++) {
        half[i * p + j] = (half[i * p + j] as number) + (cross.xx[i * p + k] as number) * h(k, j);
      }
    }
  }
  for (let i = 0; i < p; i++) {
    for (let j = 0; j < p; j++) {
      for (let k = 0; k < p; k++) {
        xx[i * p + j] = (xx[i * p + j] as number) + h(k, i) * (half[k * p + j] as number);
      }
    }
  }
  const xy = Float64Array.from({ length: p }, (_, j) =>
    cross.xy.reduce((sum, value, i) => sum + h(i, j) * value, 0),
  );
  return { ...cross, zx, xx, xy };
}

/** Fixes the last coordinate at `value`: its column times the value moves into the response. */
function holdLast(cross: CrossProducts, value: number): CrossProducts {
  const last = cross.p - 1;
  const p = cross.p;
  const column = cross.zx[last] as Float64Array;
  const xx = new Float64Array(last * last);
  for (let i = 0; i < last; i++)
    for (let j = 0; j < last; j++) xx[i * last + j] = cross.xx[i * p + j] as number;
  return {
    ...cross,
    p: last,
    zx: cross.zx.slice(0, last),
    zy: cross.zy.map((sum, at) => sum - value * (column[at] as number)),
    xx,
    xy: Float64Array.from(
      { length: last },
      (_, i) => (cross.xy[i] as number) - value * (cross.xx[i * p + last] as number),
    ),
    yy:
      cross.yy - 2 * value * (cross.xy[last] as number) + value ** 2 * (cross.xx[last * p + last] as number),
  };
}
