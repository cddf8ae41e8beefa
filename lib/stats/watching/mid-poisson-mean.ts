import { poissonCdf, poissonDensity, poissonSurvival } from '../distribution/poisson';
import { findRoot } from '../find-root';

/**
 * The Poisson mean at which the tail of `count`, less half of P(X = count), is `probability`: the mid-P limits of a
 * mean. 'upper' uses P(X >= count) and gives the lower limit, 'lower' uses P(X <= count) and gives the upper one.
 */
export function midPoissonMean(count: number, probability: number, tail: 'lower' | 'upper'): number {
  const excess = (mean: number) => {
    const half = 0.5 * poissonDensity(count, mean);
    if (tail === 'lower') return poissonCdf(count, mean) - half - probability;
    return (count === 0 ? 1 : poissonSurvival(count - 1, mean)) - half - probability;
  };
  // The limit lies well within 40 standard deviations of the count for any level a double can tell from 1.
  const highest = count + 40 * Math.sqrt(count + 1) + 800;
  return findRoot(excess, 0, highest);
}
