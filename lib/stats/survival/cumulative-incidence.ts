import { requireOpenProbability } from '../check-argument';
import { normalQuantile } from '../distribution/normal';
import { tQuantile } from '../distribution/student-t';
import { elementAt } from '../element-at';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { clusteredIncidenceVariance } from './clustered-incidence-variance';
import { checkFollowUps, type FollowUp } from './follow-up';
import { incidenceInterval } from './incidence-interval';
import { independentIncidenceVariance } from './independent-incidence-variance';
import { causesOf, type LifeTable, lifeTable } from './life-table';

export type IncidenceStep = {
  readonly time: number;
  readonly atRisk: number;
  /** Events of this cause at this time. */
  readonly events: number;
  /** Share of units ended by this cause by this time, 0-1. */
  readonly incidence: number;
  readonly standardError: number | CannotCompute;
  readonly interval: Interval | CannotCompute;
  /** Units at risk, for what they are worth as independent ones. */
  readonly watched: number;
};

export type CauseIncidence = {
  readonly cause: string;
  readonly events: number;
  readonly steps: readonly IncidenceStep[];
};

export type CumulativeIncidence = {
  readonly kind: 'cumulative-incidence';
  readonly causes: readonly CauseIncidence[];
  /** Share without any event after each time, in the order of the steps. */
  readonly overallSurvival: readonly number[];
  readonly units: number;
  readonly clusters: number | null;
  readonly level: number;
  readonly method: string;
};

/**
 * Aalen-Johansen cumulative incidence of each cause: F_k(t) = sum of S(s-) d_k / Y over the times s up to t, S the
 * share without any event. A cause that ends the watching of a unit competes with the others; `null` is censored.
 *
 * Variance by the infinitesimal jackknife of units ('independent', limits by z) or of clusters ('clustered', limits by
 * t on at most G - 1 degrees of freedom, see `clusteredIncidenceVariance`, and never narrower than for independent
 * units).
 *
 * Sources: Aalen & Johansen (1978, Scand J Stat 5, 141-150); Marubini & Valsecchi (Analysing Survival Data from
 * Clinical Trials, 1995), from memory.
 *
 * @param causes list these to also get causes without an event; by default those that occur.
 * @returns the curves; `no-data` without units.
 * @throws ArgumentError for times below 0 or NaN, counts that are no counts, or a missing cluster.
 */
export function cumulativeIncidence(
  followUps: readonly FollowUp[],
  {
    level,
    variance,
    causes = causesOf(followUps),
  }: {
    readonly level: number;
    readonly variance: 'independent' | 'clustered';
    readonly causes?: readonly string[];
  },
): CumulativeIncidence | CannotCompute {
  requireOpenProbability('level', level);
  checkFollowUps(followUps);
  const table = lifeTable(followUps, [...new Set([...causes, ...causesOf(followUps)])]);
  if (table.units === 0) return cannotCompute('no-data', 'No units were watched.');
  const clustered = variance === 'clustered' ? clusteredIncidenceVariance(followUps, table) : null;
  const clusters = clustered?.kind === 'variance' ? clustered.clusters : null;
  const independent = independentIncidenceVariance(table);
  const reachOf = (step: number, cause: number, standardError: number) => {
    const asIndependent =
      normalQuantile(0.5 + level / 2) * Math.sqrt(elementAt(elementAt(independent, step), cause));
    if (clustered?.kind !== 'variance') return asIndependent;
    const degreesOfFreedom = elementAt(elementAt(clustered.degreesOfFreedom, step), cause);
    // Runs that happen to agree do not make units less random than independent ones.
    return Math.max(asIndependent, tQuantile(0.5 + level / 2, degreesOfFreedom) * standardError);
  };
  const standardErrorOf = (step: number, cause: number): number | CannotCompute => {
    if (clustered?.kind === 'cannot-compute') return clustered;
    return Math.sqrt(elementAt(elementAt(clustered?.variances ?? independent, step), cause));
  };
  const { incidence, overallSurvival } = incidenceOf(table);
  return {
    kind: 'cumulative-incidence',
    causes: table.causes.map((cause, index) => ({
      cause,
      events: table.rows.reduce((sum, row) => sum + elementAt(row.events, index), 0),
      steps: table.rows.map((row, step): IncidenceStep => {
        const estimate = elementAt(elementAt(incidence, step), index);
        const standardError = standardErrorOf(step, index);
        const watched = clustered?.kind === 'variance' ? elementAt(clustered.watched, step) : row.atRisk;
        return {
          time: row.time,
          atRisk: row.atRisk,
          events: elementAt(row.events, index),
          incidence: estimate,
          standardError,
          watched,
          interval:
            typeof standardError === 'number'
              ? incidenceInterval(estimate, {
                  reach: reachOf(step, index, standardError),
                  level,
                  watched,
                })
              : standardError,
        };
      }),
    })),
    overallSurvival,
    units: table.units,
    clusters,
    level,
    method: `Aalen-Johansen cumulative incidence, variance by ${clustered === null ? 'unit' : 'cluster'}`,
  };
}

/** F[row][cause] and S after each row. */
function incidenceOf(table: LifeTable): { incidence: number[][]; overallSurvival: number[] } {
  let survival = 1;
  const sums = table.causes.map(() => 0);
  const overallSurvival: number[] = [];
  const incidence = table.rows.map(({ atRisk, events, allEvents }) => {
    events.forEach((count, cause) => {
      sums[cause] = elementAt(sums, cause) + (survival * count) / atRisk;
    });
    survival *= (atRisk - allEvents) / atRisk;
    overallSurvival.push(survival);
    return [...sums];
  });
  return { incidence, overallSurvival };
}
