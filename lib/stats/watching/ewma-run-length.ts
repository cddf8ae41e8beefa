import { requireCount, requireOpenProbability, requirePositive } from '../check-argument';
import { elementAt } from '../element-at';
import { ArgumentError, type CannotCompute, cannotCompute } from '../outcome';
import { betaBinomialDensities } from './beta-binomial-densities';
import { stepsToAbsorption } from './steps-to-absorption';

export type EwmaDesign = {
  readonly centre: number;
  /** lambda in (0, 1]. */
  readonly weight: number;
  /** Units of a typical batch. */
  readonly units: number;
  /** Correlation of units within a batch, 0 up to 1; the chart's limits allow for it. */
  readonly intraBatchCorrelation: number;
};

/** Points of the grid on which the average is followed. */
const GRID_POINTS = 241;

/**
 * Average run length of the EWMA chart of `ewmaProportion`: batches from the start to the first point outside the
 * limits when a unit is an event with `trueProbability`. At the centre it is the mean time between false alarms.
 *
 * The average is followed on a grid between its final limits, values in between shared by their neighbours; once the
 * limits have settled the run length solves a linear system (Lucas & Saccucci 1990, Technometrics 32, 1-12, from
 * memory), and the narrower limits of the first batches are stepped through backwards. Good to some 2 %.
 *
 * @throws ArgumentError for values out of range. @returns `out-of-range` when no batch can leave the limits.
 */
export function ewmaRunLength(
  { centre, weight, units, intraBatchCorrelation }: EwmaDesign,
  width: number,
  trueProbability: number,
): number | CannotCompute {
  requireOpenProbability('centre', centre);
  requireOpenProbability('trueProbability', trueProbability);
  requirePositive('width', width);
  requireCount('units', units);
  if (units === 0) throw new ArgumentError('units', 'must be at least 1');
  if (!(weight > 0 && weight <= 1))
    throw new ArgumentError('weight', `must be above 0 and at most 1, not ${weight}`);
  const densities = betaBinomialDensities(units, trueProbability, intraBatchCorrelation);
  const designEffect = 1 + (units - 1) * intraBatchCorrelation;
  const batchVariance = (centre * (1 - centre) * designEffect) / units;
  const settled = width * Math.sqrt((batchVariance * weight) / (2 - weight));
  const spacing = (2 * settled) / (GRID_POINTS - 1);
  /** Calls `visit` with the share of each grid point that the next average, from `point`, falls on. */
  const follow = (point: number, reach: number, visit: (next: number, share: number) => void) => {
    const value = -settled + point * spacing;
    densities.forEach((density, events) => {
      const next = weight * (events / units - centre) + (1 - weight) * value;
      if (Math.abs(next) > reach) return;
      const place = Math.min(GRID_POINTS - 1, Math.max(0, (next + settled) / spacing));
      const below = Math.min(GRID_POINTS - 2, Math.floor(place));
      visit(below, density * (below + 1 - place));
      visit(below + 1, density * (place - below));
    });
  };
  const transitions = new Float64Array(GRID_POINTS * GRID_POINTS);
  for (let point = 0; point < GRID_POINTS; point += 1) {
    follow(point, settled, (next, share) => {
      const place = point * GRID_POINTS + next;
      transitions[place] = elementAt(transitions, place) + share;
    });
  }
  let lengths = stepsToAbsorption(transitions, GRID_POINTS);
  // The limits after t batches are settled sqrt(1 - (1 - weight)^(2 t)).
  const warmUp = weight === 1 ? 0 : Math.ceil(Math.log(1e-6) / (2 * Math.log(1 - weight)));
  for (let batch = warmUp; batch >= 1; batch -= 1) {
    const reach = settled * Math.sqrt(1 - (1 - weight) ** (2 * batch));
    const later = lengths;
    lengths = later.map((_, point) => {
      let length = 1;
      follow(point, reach, (next, share) => {
        length += share * elementAt(later, next);
      });
      return length;
    });
  }
  const length = elementAt(lengths, (GRID_POINTS - 1) / 2);
  if (!Number.isFinite(length) || length <= 0 || length > 1e12) {
    return cannotCompute('out-of-range', 'No batch can leave the limits, so the chart never alarms.');
  }
  return length;
}
