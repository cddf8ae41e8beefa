import { requireEventsOfTrials, requireOpenProbability, requirePositive } from '../check-argument';
import { ArgumentError } from '../outcome';

export type EwmaPoint = {
  readonly value: number;
  readonly standardError: number;
  /** centre -+ width standardError; may lie outside 0-1. */
  readonly low: number;
  readonly high: number;
  readonly signal: boolean;
};

export type EwmaChart = {
  readonly kind: 'ewma';
  readonly points: readonly EwmaPoint[];
  readonly method: string;
};

/**
 * Exponentially weighted moving average of proportions, in the order given:
 * z = lambda events / units + (1 - lambda) z, from z = centre, with the exact variance
 * v = lambda^2 centre (1 - centre) deff / units + (1 - lambda)^2 v, limits centre -+ width sqrt(v), a signal outside.
 * deff = 1 + (units - 1) intraBatchCorrelation; with correlation 0 units are independent.
 *
 * Source: Roberts (1959, Technometrics 1, 239-250), Montgomery (Introduction to Statistical Quality Control, ch. 9),
 * from memory. Choose `width` for a stated in-control run length with `ewmaRunLength`.
 *
 * @param centre expected probability, strictly between 0 and 1. @param weight lambda in (0, 1]; small = long memory.
 * @throws ArgumentError for impossible counts, a batch without units, or parameters out of range.
 */
export function ewmaProportion(
  batches: readonly { readonly events: number; readonly units: number }[],
  {
    centre,
    weight,
    width,
    intraBatchCorrelation,
  }: {
    readonly centre: number;
    readonly weight: number;
    readonly width: number;
    readonly intraBatchCorrelation: number;
  },
): EwmaChart {
  requireOpenProbability('centre', centre);
  if (!(weight > 0 && weight <= 1))
    throw new ArgumentError('weight', `must be above 0 and at most 1, not ${weight}`);
  requirePositive('width', width);
  if (!(intraBatchCorrelation >= 0 && intraBatchCorrelation <= 1)) {
    throw new ArgumentError('intraBatchCorrelation', `must be between 0 and 1, not ${intraBatchCorrelation}`);
  }
  let value = centre;
  let variance = 0;
  const points = batches.map(({ events, units }): EwmaPoint => {
    requireEventsOfTrials('events', events, 'units', units);
    if (units === 0) throw new ArgumentError('units', 'a batch of the chart must have at least one unit');
    const designEffect = 1 + (units - 1) * intraBatchCorrelation;
    value = weight * (events / units) + (1 - weight) * value;
    variance = (weight ** 2 * centre * (1 - centre) * designEffect) / units + (1 - weight) ** 2 * variance;
    const standardError = Math.sqrt(variance);
    const low = centre - width * standardError;
    const high = centre + width * standardError;
    return { value, standardError, low, high, signal: value < low || value > high };
  });
  return { kind: 'ewma', points, method: `EWMA of proportions, weight ${weight}, width ${width}` };
}
