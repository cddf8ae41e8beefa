import {
  requireCount,
  requireFinite,
  requireNonNegative,
  requireOpenProbability,
} from '../../check-argument';
import { logGamma } from '../../distribution/gamma';
import { tQuantile } from '../../distribution/student-t';

/** Equally likely values of the log odds over which a count is averaged. */
const points = 200;

export type PredictedCount = {
  /** Mean of the count. */
  readonly expected: number;
  /** The count lies in low to high, both included, with the probability asked for or more. */
  readonly low: number;
  readonly high: number;
};

/**
 * Predictive distribution of a count of `units` that share one probability whose log odds are logit + standardDeviation T, T
 * Student's t with the degrees of freedom given (Infinity: normal). The interval is the central one: each tail outside has
 * (1 - level) / 2 at most. With few units it holds more than asked for, counts being whole.
 *
 * @throws ArgumentError for a count that is none, a spread that is negative or not finite, or a level outside 0-1.
 */
export function predictCount(given: {
  readonly units: number;
  readonly logit: number;
  readonly standardDeviation: number;
  readonly degreesOfFreedom: number;
  readonly level: number;
}): PredictedCount {
  const { units, logit, standardDeviation, degreesOfFreedom, level } = given;
  requireCount('units', units);
  requireFinite('logit', logit);
  requireNonNegative('standardDeviation', standardDeviation);
  requireOpenProbability('level', level);
  const mass = new Float64Array(units + 1);
  const ways = logWays(units);
  for (const quantile of quantilesOf(degreesOfFreedom)) {
    addBinomial(mass, ways, logit + standardDeviation * quantile);
  }
  let expected = 0;
  for (let count = 0; count <= units; count += 1) expected += (count * (mass[count] as number)) / points;
  const tail = ((1 - level) / 2) * points;
  let low = 0;
  for (let below = mass[0] as number; below <= tail && low < units; below += mass[low] as number) low += 1;
  let high = units;
  for (let above = mass[units] as number; above <= tail && high > 0; above += mass[high] as number) high -= 1;
  return { expected, low, high };
}

/** Logarithms of the numbers of ways to choose each count of units. */
function logWays(units: number): Float64Array {
  const all = logGamma(units + 1);
  return Float64Array.from(
    { length: units + 1 },
    (_, count) => all - logGamma(count + 1) - logGamma(units - count + 1),
  );
}

/** Adds the binomial probabilities of every count. By log odds, so that nothing is lost next to a probability of 0 or 1. */
function addBinomial(mass: Float64Array, ways: Float64Array, odds: number): void {
  const units = mass.length - 1;
  const logNone = -(Math.max(0, odds) + Math.log1p(Math.exp(-Math.abs(odds))));
  for (let count = 0; count <= units; count += 1)
    mass[count] =
      (mass[count] as number) + Math.exp((ways[count] as number) + count * odds + units * logNone);
}

const known = new Map<number, Float64Array>();

/** The middles of `points` equally likely parts of Student's t. */
function quantilesOf(degreesOfFreedom: number): Float64Array {
  const found = known.get(degreesOfFreedom);
  if (found) return found;
  const quantiles = Float64Array.from({ length: points }, (_, at) =>
    tQuantile((at + 0.5) / points, degreesOfFreedom),
  );
  known.set(degreesOfFreedom, quantiles);
  return quantiles;
}
