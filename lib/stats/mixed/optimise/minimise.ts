import { dotProduct, solveWithFactor } from '../linear-algebra/small-matrix';
import type { Criterion, Derivatives } from './criterion';
import { positiveFactor } from './positive-factor';
import { type SecantPair, withSecantPairs } from './secant-pairs';

export type Minimum = {
  readonly x: Float64Array;
  readonly value: number;
  readonly gradient: Float64Array;
  /** The curvature model at x. */
  readonly curvature: Float64Array;
  readonly evaluations: number;
  readonly converged: boolean;
};

export type MinimiseOptions = {
  /** Stop once a full step promises a decrease below this. Default 1e-13. */
  readonly tolerance?: number;
  readonly mostEvaluations?: number;
  /** Relative error of a value: a rise of less counts as none. Default 1e-12. */
  readonly noise?: number;
  /** The longest step allowed in coordinate i from x[i]. */
  readonly longestStep?: (x: number, i: number) => number;
  /**
   * Coordinates in which the criterion is even: one that comes nearer to 0 than this is put at 0 and held there, its gradient
   * being 0 too. By coordinate; 0 for none.
   */
  readonly vanishes?: (i: number) => number;
};

/**
 * Steps from further out than this (promised decrease) say little about the curvature at the minimum and are not learnt
 * from; the criterion's own guess is better there.
 */
const LOCAL = 5;

/** The least share of an even coordinate that one step towards 0 leaves. */
const SHRINK_MOST = 0.15;

/**
 * Minimises a smooth function from a start: each step solves (curvature model) step = -gradient and is halved until the
 * value goes down. The model is the criterion's own guess, corrected by the changes of gradient seen on the last steps
 * (BFGS updates), so that convergence is fast from the first step and superlinear at the end. No randomness.
 *
 * The criterion must end with `x` as its last evaluated point: `value` is called there again when it is not.
 */
export function minimise(criterion: Criterion, start: Float64Array, options: MinimiseOptions = {}): Minimum {
  const tolerance = options.tolerance ?? 1e-13;
  const most = options.mostEvaluations ?? 200;
  const size = criterion.dimension;
  const vanishes = options.vanishes ?? (() => 0);
  const held = (at: Float64Array, i: number) => at[i] === 0 && vanishes(i) > 0;
  let x = Float64Array.from(start);
  let value = criterion.value(x);
  let evaluations = 1;
  if (size === 0 || !Number.isFinite(value)) {
    const empty = new Float64Array(size);
    const converged = Number.isFinite(value);
    return { x, value, gradient: empty, curvature: new Float64Array(size * size), evaluations, converged };
  }
  let here: Derivatives = criterion.derivatives();
  const pairs: SecantPair[] = [];
  for (;;) {
    const even = Array.from({ length: size }, (_, i) => vanishes(i) > 0 && x[i] !== 0);
    const curvature = withSecantPairs(withEvenSlopes(here, x, even), pairs, size);
    for (let i = 0; i < size; i++) if (held(x, i)) isolate(curvature, size, i);
    const { factor } = positiveFactor(curvature, size);
    const step = here.gradient.map((slope) => -slope);
    solveWithFactor(factor, size, step);
    if (-dotProduct(here.gradient, step) / 2 < 10 * LOCAL) shrinkEvenCoordinates(step, here, x, even);
    limitStep(step, x, options.longestStep);
    const slope = dotProduct(here.gradient, step);
    if (-slope / 2 < tolerance) return finish(true, curvature);
    if (evaluations >= most) return finish(false, curvature);
    const noise = (options.noise ?? 1e-12) * (1 + Math.abs(value));
    let length = 1;
    let found = false;
    for (let tries = 0; tries < 40 && !found; tries++) {
      const next = x.map((at, i) => at + length * (step[i] as number));
      for (let i = 0; i < size; i++) if (Math.abs(next[i] as number) < vanishes(i)) next[i] = 0;
      const nextValue = criterion.value(next);
      evaluations += 1;
      if (nextValue <= value + 1e-4 * length * slope + noise) {
        const there = criterion.derivatives();
        if (-slope / 2 < LOCAL) {
          pairs.push({
            change: next.map((at, i) => (held(next, i) ? 0 : at - (x[i] as number))),
            response: there.gradient.map((g, i) => (held(next, i) ? 0 : g - (here.gradient[i] as number))),
          });
        }
        if (pairs.length > Math.min(size + 2, 12)) pairs.shift();
        x = next;
        value = nextValue;
        here = there;
        found = true;
      } else {
        length *= tries < 2 ? 0.5 : 0.25;
      }
    }
    if (!found) {
      // Nothing below this point along the step: rounding is all that is left, or the model is useless here.
      if (pairs.length === 0 || -slope / 2 < 1e-9) return finish(-slope / 2 < 1e-6, curvature);
      pairs.length = 0;
      criterion.value(x);
    }
  }

  function finish(converged: boolean, curvature: Float64Array): Minimum {
    criterion.value(x);
    return { x, value, gradient: here.gradient, curvature, evaluations, converged };
  }
}

/** f even in x_i is a function of x_i^2, so that its curvature holds f_i / x_i besides what the criterion's guess has. */
function withEvenSlopes(here: Derivatives, x: Float64Array, even: readonly boolean[]): Float64Array {
  const curvature = here.curvature.slice();
  const size = x.length;
  for (let i = 0; i < size; i++) {
    const at = i * size + i;
    if (even[i])
      curvature[at] =
        (curvature[at] as number) + Math.max((here.gradient[i] as number) / (x[i] as number), 0);
  }
  return curvature;
}

/**
 * Far above its minimum an even coordinate shrinks by only a third a step, the function being nearly a fourth power there. In
 * x_i^2 it is nearly a parabola, whose minimum is the better goal (or, when that lies below 0, a good part of the way to 0).
 */
function shrinkEvenCoordinates(
  step: Float64Array,
  here: Derivatives,
  x: Float64Array,
  even: readonly boolean[],
): void {
  const size = x.length;
  const before = step.slice();
  for (let i = 0; i < size; i++) {
    const at = x[i] as number;
    const slope = here.gradient[i] as number;
    const guess = here.curvature[i * size + i] as number;
    if (!even[i] || !(slope / at > 0.5 * guess) || !(guess > 0)) continue;
    const square = at * at - (2 * slope * at) / guess;
    const goal = Math.sqrt(Math.max(square, at * at * SHRINK_MOST ** 2));
    step[i] = Math.sign(at) * goal - at;
  }
  if (!(dotProduct(here.gradient, step) < 0)) step.set(before);
}

/** Takes coordinate i out of the model. */
function isolate(curvature: Float64Array, size: number, i: number): void {
  for (let j = 0; j < size; j++) {
    curvature[i * size + j] = 0;
    curvature[j * size + i] = 0;
  }
  curvature[i * size + i] = 1;
}

function limitStep(step: Float64Array, x: Float64Array, longest?: (x: number, i: number) => number): void {
  if (!longest) return;
  let share = 1;
  for (let i = 0; i < step.length; i++) {
    const most = longest(x[i] as number, i);
    const wanted = Math.abs(step[i] as number);
    if (wanted > most) share = Math.min(share, most / wanted);
  }
  if (share < 1) for (let i = 0; i < step.length; i++) step[i] = (step[i] as number) * share;
}
