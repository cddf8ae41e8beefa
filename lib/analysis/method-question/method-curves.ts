import { cumulativeIncidence } from '@/lib/stats/survival/cumulative-incidence';
import type { FollowUp } from '@/lib/stats/survival/follow-up';
import { shownLevel } from '../shown-figure';

/** Below so many units watched, a single one moves a curve by more than 5 in 100. Our choice. */
export const fewestWatched = 20;

/** Time to finding of units of one batch, with its method and treatment run. */
export type MethodFollowUp = FollowUp & { readonly methodKey: string; readonly cluster: string };

/** The share found contaminated by each day, percent; limits null where nothing carries them. */
export type CurveStep = {
  readonly day: number;
  readonly percent: number;
  readonly low: number | null;
  readonly high: number | null;
  /** Units still watched just before the day. */
  readonly watched: number;
};

export type MethodCurve = {
  readonly method: string;
  readonly units: number;
  readonly runs: number | null;
  readonly found: number;
  readonly steps: readonly CurveStep[];
};

/**
 * Cumulative incidence of contamination by method (Aalen-Johansen, other loss or closing as the competing end, variance by
 * treatment run). Raw: nothing is levelled out. A curve ends where fewer than `fewestWatched` units are still watched.
 */
export function methodCurves(followUps: readonly MethodFollowUp[], days: number): MethodCurve[] {
  const methods = [...new Set(followUps.map(({ methodKey }) => methodKey))].sort();
  return methods.flatMap((method) => {
    const own = followUps.filter(({ methodKey }) => methodKey === method);
    const answer = cumulativeIncidence(own, {
      level: shownLevel,
      variance: 'clustered',
      causes: ['contaminated'],
    });
    if (answer.kind === 'cannot-compute') return [];
    const curve = answer.causes.find(({ cause }) => cause === 'contaminated');
    if (curve === undefined) return [];
    const steps = curve.steps
      .filter(({ time, atRisk }) => time <= days && atRisk >= fewestWatched)
      .map(
        ({ time, incidence, interval, atRisk }): CurveStep => ({
          day: time,
          percent: 100 * incidence,
          low: interval.kind === 'interval' ? 100 * interval.low : null,
          high: interval.kind === 'interval' ? 100 * interval.high : null,
          watched: atRisk,
        }),
      );
    return [{ method, units: answer.units, runs: answer.clusters, found: curve.events, steps }];
  });
}
