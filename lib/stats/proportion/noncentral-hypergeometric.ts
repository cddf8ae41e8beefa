import { logHypergeometricDensity } from '../distribution/hypergeometric';
import type { ProportionCounts } from './proportion-counts';

/**
 * The distribution of the events in the first group given both group sizes and all events, at any odds ratio
 * (Fisher's noncentral hypergeometric): proportional to density(k) * exp(k logOdds) on least..most.
 */
export type ConditionalEvents = {
  readonly least: number;
  readonly most: number;
  /** log density at odds ratio 1, from least on. */
  readonly logDensities: readonly number[];
};

export function conditionalEvents(first: ProportionCounts, second: ProportionCounts): ConditionalEvents {
  const events = first.events + second.events;
  const least = Math.max(0, events - second.trials);
  const most = Math.min(events, first.trials);
  const logDensities = Array.from({ length: most - least + 1 }, (_, index) =>
    logHypergeometricDensity(least + index, first.trials, second.trials, events),
  );
  return { least, most, logDensities };
}

/** Sums over k in from..to of the tilted, unnormalised density: its log, and the mean and variance of k there. */
export function tiltedPart(
  { least, logDensities }: ConditionalEvents,
  logOdds: number,
  from: number,
  to: number,
): { logSum: number; mean: number; variance: number } {
  let top = Number.NEGATIVE_INFINITY;
  for (let k = from; k <= to; k += 1) top = Math.max(top, (logDensities[k - least] ?? 0) + k * logOdds);
  let sum = 0;
  let first = 0;
  let second = 0;
  for (let k = from; k <= to; k += 1) {
    const weight = Math.exp((logDensities[k - least] ?? 0) + k * logOdds - top);
    sum += weight;
    first += weight * (k - from);
    second += weight * (k - from) ** 2;
  }
  const offset = first / sum;
  return { logSum: top + Math.log(sum), mean: from + offset, variance: second / sum - offset * offset };
}
