import { findRoot } from '../find-root';

/** Where a profile deviance rises by `rise` above its minimum, on either side of the estimate. */
export type ProfileLimits = { readonly low: number; readonly high: number };

/**
 * Profile-likelihood limits: the values v with deviance(v) - minimum = rise (the chi-square quantile with 1 df), deviance(v)
 * being -2 log-likelihood maximised over everything else with the quantity held at v.
 *
 * @param firstStep about one standard error, where the search outwards begins.
 * @param lowest the boundary of the parameter (0 for a standard deviation); it is the lower limit when the profile does
 *   not rise enough before it. Infinity is the upper limit when the profile never rises enough.
 * @param width how near a limit is to be found, as a share of the stretch where it is looked for or of its own distance.
 */
export function profileLimits(
  deviance: (value: number) => number,
  estimate: number,
  minimum: number,
  rise: number,
  firstStep: number,
  lowest = Number.NEGATIVE_INFINITY,
  width = 1e-8,
): ProfileLimits {
  const goal = Math.sqrt(rise);
  // Each deviance is a fit of its own: the one at the estimate is the minimum, and no point is asked about twice.
  const known = new Map([[estimate, -goal]]);
  const distance = (value: number) => {
    const found = known.get(value) ?? Math.sqrt(Math.max(deviance(value) - minimum, 0)) - goal;
    known.set(value, found);
    return Math.abs(found) < width * goal ? 0 : found;
  };
  const search = (direction: 1 | -1): number => {
    let inside = estimate;
    let step = 2 * firstStep;
    for (let tries = 0; tries < 60; tries++) {
      let outside = inside + direction * step;
      if (direction < 0 && outside <= lowest) outside = lowest;
      const there = distance(outside);
      if (there === 0) return outside;
      if (there > 0) {
        const stretch = Math.abs(outside - inside);
        return findRoot(distance, Math.min(inside, outside), Math.max(inside, outside), width * stretch);
      }
      if (outside === lowest) return lowest;
      inside = outside;
      step *= 1.6;
    }
    return direction * Number.POSITIVE_INFINITY;
  };
  return { low: estimate <= lowest ? lowest : search(-1), high: search(1) };
}
