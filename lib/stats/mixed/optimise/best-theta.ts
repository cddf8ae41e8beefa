import type { Criterion } from './criterion';
import { type Minimum, minimise } from './minimise';

/** Below this a standard deviation ratio is compared with exactly 0. */
const NEARLY_ZERO = 1e-3;
/** How far a value may rise and still count as no worse: the noise of evaluating it. */
const NO_WORSE = 1e-9;
/** A rise of the criterion that no second minimum makes up for. */
const FAR_HIGHER = 40;

/**
 * Minimises over theta (the first `termCount` coordinates) and whatever else the criterion has.
 *
 * The criterion is even in every theta and so has a stationary point at 0, which need not be a minimum: the search starts
 * away from 0 and moves freely across it. Afterwards theta is made non-negative; small thetas are set to exactly 0
 * where that is no worse; and each term in doubt, and all of them at once, is tried at 0, so that a better
 * minimum on the boundary is not missed.
 */
export function bestTheta(
  criterion: Criterion,
  start: Float64Array,
  termCount: number,
  tolerance?: number,
): Minimum {
  const options = {
    ...(tolerance === undefined ? {} : { tolerance }),
    longestStep: (x: number, i: number) => (i < termCount ? 0.5 + 2 * Math.abs(x) : Number.POSITIVE_INFINITY),
  };
  let best = minimise(criterion, start, options);
  if (!Number.isFinite(best.value)) return best;
  let evaluations = best.evaluations;
  // By its curvature the value at 0 would be far higher; nothing to be found there.
  const beyondDoubt = (k: number) =>
    ((best.x[k] as number) ** 2 * (best.curvature[k * criterion.dimension + k] as number)) / 2 > FAR_HIGHER;
  const boundaryStarts = () => {
    const x = best.x.map((value, i) => (i < termCount ? Math.abs(value) : value));
    const terms = Array.from({ length: termCount }, (_, k) => k).filter((k) => x[k] !== 0 && !beyondDoubt(k));
    const small = terms.filter((k) => (x[k] as number) < NEARLY_ZERO);
    const sets = [small, ...terms.map((k) => [k]), terms.length > 1 ? terms : []];
    return sets
      .filter((set) => set.length > 0)
      .map((set) => x.map((value, i) => (set.includes(i) ? 0 : value)));
  };
  for (let round = 0; round <= termCount; round++) {
    const better = boundaryStarts().find((x) => {
      evaluations += 1;
      return criterion.value(x) <= best.value + NO_WORSE;
    });
    if (!better) break;
    const next = minimise(criterion, better, options);
    evaluations += next.evaluations;
    best = next;
  }
  const x = best.x.map((value, i) => (i < termCount ? Math.abs(value) : value));
  const value = criterion.value(x);
  const { gradient, curvature } = termCount > 0 ? criterion.derivatives() : best;
  return { ...best, x, value, gradient, curvature, evaluations: evaluations + 1 };
}
