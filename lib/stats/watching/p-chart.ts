import { requireEventsOfTrials, requireOpenProbability } from '../check-argument';
import { elementAt } from '../element-at';
import { ArgumentError, type CannotCompute, cannotCompute } from '../outcome';

export type PChartPoint = {
  readonly proportion: number;
  /** (proportion - centre) / sqrt(centre (1 - centre) / units). */
  readonly z: number;
  /** Three-sigma limits, clamped to 0-1. */
  readonly low: number;
  readonly high: number;
  readonly outside: boolean;
  /** Limits widened by Laney's sigma; with one batch there is none to widen by. */
  readonly laneyLow: number | CannotCompute;
  readonly laneyHigh: number | CannotCompute;
  readonly outsideLaney: boolean;
};

export type PChart = {
  readonly kind: 'p-chart';
  readonly centre: number;
  /** Mean moving range of z over 1.128: 1 for independent units, above 1 when batches vary beyond chance. */
  readonly laneySigma: number | CannotCompute;
  readonly points: readonly PChartPoint[];
  readonly method: string;
};

/** Expected range of two standard normals, 2 / sqrt(pi) = 1.128379..., as the tables round it. */
const MEAN_RANGE_OF_TWO = 1.128;

/**
 * p chart with three-sigma limits, centre -+ 3 sqrt(centre (1 - centre) / units), and Laney's p' chart, which widens
 * them by the batch-to-batch variation seen in the moving ranges of z.
 *
 * Sources: Montgomery (Introduction to Statistical Quality Control), Laney (2002, Quality Engineering 14, 531-537),
 * from memory. Units of a batch are alike, so it is Laney's limits that tell chance from trouble here.
 *
 * @param centre known rate, strictly between 0 and 1; without it the pooled rate of the batches.
 * @throws ArgumentError for impossible counts or a batch without units.
 */
export function pChart(
  batches: readonly { readonly events: number; readonly units: number }[],
  centre?: number,
): PChart | CannotCompute {
  if (centre !== undefined) requireOpenProbability('centre', centre);
  let events = 0;
  let units = 0;
  for (const batch of batches) {
    requireEventsOfTrials('events', batch.events, 'units', batch.units);
    if (batch.units === 0)
      throw new ArgumentError('units', 'a batch of the chart must have at least one unit');
    events += batch.events;
    units += batch.units;
  }
  if (units === 0) return cannotCompute('no-data', 'There are no batches to chart.');
  const middle = centre ?? events / units;
  if (middle === 0 || middle === 1) {
    return cannotCompute(
      'no-variation',
      'All units ended the same way, so there is no spread to draw limits from.',
    );
  }
  const scored = batches.map((batch) => {
    const proportion = batch.events / batch.units;
    const sigma = Math.sqrt((middle * (1 - middle)) / batch.units);
    return { proportion, sigma, z: (proportion - middle) / sigma };
  });
  const ranges = scored.slice(1).map(({ z }, index) => Math.abs(z - elementAt(scored, index).z));
  const laneySigma: number | CannotCompute =
    ranges.length > 0
      ? ranges.reduce((sum, range) => sum + range, 0) / ranges.length / MEAN_RANGE_OF_TWO
      : cannotCompute('too-few-observations', 'A moving range needs at least two batches.');
  const clamp = (value: number) => Math.min(1, Math.max(0, value));
  return {
    kind: 'p-chart',
    centre: middle,
    laneySigma,
    points: scored.map(({ proportion, sigma, z }) => ({
      proportion,
      z,
      low: clamp(middle - 3 * sigma),
      high: clamp(middle + 3 * sigma),
      outside: Math.abs(z) > 3,
      laneyLow: typeof laneySigma === 'number' ? clamp(middle - 3 * sigma * laneySigma) : laneySigma,
      laneyHigh: typeof laneySigma === 'number' ? clamp(middle + 3 * sigma * laneySigma) : laneySigma,
      outsideLaney: typeof laneySigma === 'number' && Math.abs(z) > 3 * laneySigma,
    })),
    method: "p chart with Laney's limits",
  };
}
