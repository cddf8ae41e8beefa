import type { Criterion } from './criterion';
import { type MinimiseOptions, type Minimum, minimise } from './minimise';

/** Below this a theta is put at exactly 0, and above 0 looked at again at the end. */
const NEARLY_ZERO = 1e-4;
/** Where a theta at 0 is looked at again: a decrease from 0 to here means that 0 is no minimum. */
const BESIDE_ZERO = 0.02;
export type Accuracy = Pick<MinimiseOptions, 'tolerance' | 'noise'>;

/** A decrease smaller than this is the noise of evaluating. */
const NOT_NOISE = 1e-9;
/** A rise of the criterion that no second minimum makes up for. */
const FAR_HIGHER = 40;

/**
 * Minimises over theta (the first `termCount` coordinates) and whatever else the criterion has.
 *
 * The criterion is even in every theta and so has a stationary point at 0, which need not be a minimum: the search starts
 * away from 0 and moves freely across it; a theta that has all but vanished is put at 0. Afterwards every theta at 0 is
 * moved a little off it again, and each term in doubt, and all of them at once, is tried at 0, so that neither a
 * minimum beside the boundary nor a better one on it is missed.
 */
export function bestTheta(
  criterion: Criterion,
  start: Float64Array,
  termCount: number,
  accuracy: Accuracy = { tolerance: 1e-13 },
): Minimum {
  const options = thetaOptions(termCount, accuracy);
  let best = minimise(criterion, start, options);
  if (!Number.isFinite(best.value)) return best;
  let evaluations = best.evaluations;
  for (let round = 0; round <= termCount; round++) {
    const better = otherStarts(best, criterion.dimension, termCount).find((x) => {
      evaluations += 1;
      return criterion.value(x) < best.value - NOT_NOISE;
    });
    if (!better) break;
    const next = minimise(criterion, better, options);
    evaluations += next.evaluations;
    if (!(next.value < best.value)) break;
    best = next;
  }
  const x = best.x.map((value, i) => (i < termCount ? Math.abs(value) : value));
  const value = criterion.value(x);
  return { ...best, x, value, evaluations: evaluations + 1 };
}

/** How theta, the first `termCount` coordinates, is searched: in limited steps, and at 0 once it has all but vanished. */
export function thetaOptions(termCount: number, accuracy: Accuracy): MinimiseOptions {
  return {
    ...accuracy,
    longestStep: (x, i) => (i < termCount ? 0.5 + 2 * Math.abs(x) : Number.POSITIVE_INFINITY),
    vanishes: (i) => (i < termCount ? NEARLY_ZERO : 0),
  };
}

/**
 * `bestTheta` from a given start or, where there is none or the search does not get anywhere from it, from the usual one.
 * Evaluations of both count.
 */
export function bestFrom(
  criterion: Criterion,
  given: Float64Array | undefined,
  usual: () => Float64Array,
  termCount: number,
  accuracy: Accuracy,
): Minimum {
  if (given === undefined) return bestTheta(criterion, usual(), termCount, accuracy);
  const found = bestTheta(criterion, given, termCount, accuracy);
  if (found.converged && Number.isFinite(found.value)) return found;
  const again = bestTheta(criterion, usual(), termCount, accuracy);
  return { ...again, evaluations: found.evaluations + again.evaluations };
}

/** Points worth a look from a minimum: thetas at 0 moved off it, and thetas in doubt put at 0, one by one and together. */
function otherStarts(best: Minimum, dimension: number, termCount: number): Float64Array[] {
  const terms = Array.from({ length: termCount }, (_, k) => k);
  const doubtful = terms.filter((k) => {
    const theta = best.x[k] as number;
    return theta !== 0 && (theta ** 2 * (best.curvature[k * dimension + k] as number)) / 2 < FAR_HIGHER;
  });
  const sets = doubtful.length > 1 ? [...doubtful.map((k) => [k]), doubtful] : doubtful.map((k) => [k]);
  return [
    ...terms
      .filter((k) => best.x[k] === 0)
      .map((k) => best.x.map((value, i) => (i === k ? BESIDE_ZERO : value))),
    ...sets.map((set) => best.x.map((value, i) => (set.includes(i) ? 0 : value))),
  ];
}
