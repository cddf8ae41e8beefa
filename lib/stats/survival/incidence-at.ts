import { requireNonNegative } from '../check-argument';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import type { CumulativeIncidence } from './cumulative-incidence';
import { noEventInterval } from './incidence-interval';

export type IncidenceAt = {
  readonly kind: 'estimate';
  readonly estimate: number;
  readonly interval: Interval | CannotCompute;
  readonly time: number;
  /** Units still watched just before `time`. */
  readonly atRisk: number;
  /** Events of the cause up to `time`. */
  readonly events: number;
  readonly units: number;
  readonly method: string;
};

/**
 * Share of units ended by `cause` by `time` (e.g. found contaminated by day 21).
 *
 * @returns the share; `out-of-range` when no unit was watched that long and some were left open, so that the curve
 *   is not known there; `no-data` for a cause the curve does not hold.
 */
export function incidenceAt(
  curves: CumulativeIncidence,
  cause: string,
  time: number,
): IncidenceAt | CannotCompute {
  requireNonNegative('time', time);
  const curve = curves.causes.find((each) => each.cause === cause);
  if (curve === undefined) return cannotCompute('no-data', `The curves have no cause "${cause}".`);
  const upTo = curve.steps.filter((step) => step.time <= time);
  const last = upTo.at(-1);
  const next = curve.steps[upTo.length];
  // Once every unit has ended the curve stays where it is.
  const allEnded = (curves.overallSurvival.at(-1) ?? 1) === 0;
  if (next === undefined && last !== undefined && last.time < time && !allEnded) {
    return cannotCompute('out-of-range', `No unit was watched for longer than ${last.time}.`);
  }
  const atRisk = last?.time === time ? last.atRisk : (next?.atRisk ?? 0);
  const shared = {
    kind: 'estimate',
    time,
    atRisk,
    events: upTo.reduce((sum, step) => sum + step.events, 0),
    units: curves.units,
    method: curves.method,
  } as const;
  const estimate = last?.incidence ?? 0;
  // Without an event the limit rests on the units still watched at `time`, not at the step before it.
  const watched = last?.time === time ? last.watched : (next?.watched ?? 0);
  const known = curve.steps.some((step) => typeof step.standardError === 'number');
  const interval =
    estimate === 0 && known ? noEventInterval(watched, curves.level) : (last ?? next)?.interval;
  return { ...shared, estimate, interval: interval ?? noEventInterval(watched, curves.level) };
}
