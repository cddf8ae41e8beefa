import { requireOpenProbability } from '../check-argument';
import { normalQuantile } from '../distribution/normal';
import { tQuantile } from '../distribution/student-t';
import { elementAt } from '../element-at';
import { type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { clusteredIncidenceVariance } from './clustered-incidence-variance';
import { checkFollowUps, type FollowUp } from './follow-up';
import { anyCause, type LifeTable, lifeTable } from './life-table';
import { type SurvivalTransform, survivalInterval } from './survival-interval';

export type KaplanMeierStep = {
  readonly time: number;
  readonly atRisk: number;
  readonly events: number;
  readonly censored: number;
  /** Share still without an event after this time, 0-1. */
  readonly survival: number;
  readonly standardError: number | CannotCompute;
  readonly interval: Interval | CannotCompute;
};

export type KaplanMeier = {
  readonly kind: 'survival';
  /** One for every distinct time, of events or of ended watching. */
  readonly steps: readonly KaplanMeierStep[];
  readonly units: number;
  readonly events: number;
  /** Clusters behind a clustered variance. */
  readonly clusters: number | null;
  readonly level: number;
  readonly method: string;
};

export type KaplanMeierOptions = {
  readonly level: number;
  readonly transform: SurvivalTransform;
  /** 'clustered' where units of a treatment run are alike, which they are; 'independent' is Greenwood's. */
  readonly variance: 'independent' | 'clustered';
};

/**
 * Kaplan-Meier estimate of the share of units without an event (of any cause) by each time.
 *
 * S(t) = product of (1 - d / Y) over the times up to t. Independent units: Greenwood's variance
 * S^2 sum(d / (Y (Y - d))), limits by z. Clustered: the infinitesimal jackknife of the clusters, limits by t on at most
 * G - 1 degrees of freedom (see `clusteredIncidenceVariance`) and never narrower than Greenwood's. Where S has come down to 0 there is no standard error.
 *
 * Where a competing end (discarding, closing) prevents the event, S is not the share that ends clean: use the
 * cumulative incidence.
 *
 * Sources: Kaplan & Meier (1958, JASA 53, 457-481); Greenwood (1926); Therneau & Grambsch (Modeling Survival Data,
 * 2000, ch. 2 and 7), from memory.
 *
 * @returns the curve; `no-data` without units.
 * @throws ArgumentError for times below 0 or NaN, counts that are no counts, or a missing cluster.
 */
export function kaplanMeier(
  followUps: readonly FollowUp[],
  { level, transform, variance }: KaplanMeierOptions,
): KaplanMeier | CannotCompute {
  requireOpenProbability('level', level);
  checkFollowUps(followUps);
  const merged = anyCause(followUps);
  const table = lifeTable(merged, ['any']);
  if (table.units === 0) return cannotCompute('no-data', 'No units were watched.');
  const clustered = variance === 'clustered' ? clusteredIncidenceVariance(merged, table) : null;
  const reachOf = (step: number, survivalHere: number, standardError: number) => {
    const asIndependent =
      normalQuantile(0.5 + level / 2) * survivalHere * Math.sqrt(elementAt(greenwood, step));
    if (clustered?.kind !== 'variance') return asIndependent;
    const degreesOfFreedom = elementAt(elementAt(clustered.degreesOfFreedom, step), 0);
    // Runs that happen to agree do not make units less random than independent ones.
    return Math.max(asIndependent, tQuantile(0.5 + level / 2, degreesOfFreedom) * standardError);
  };
  const survival = survivalOf(table);
  const greenwood = greenwoodSums(table);
  const steps = table.rows.map((row, index): KaplanMeierStep => {
    const here = elementAt(survival, index);
    let standardError: number | CannotCompute;
    if (here === 0) standardError = cannotCompute('no-variation', 'No unit is left, so there is no spread.');
    else if (clustered === null) standardError = here * Math.sqrt(elementAt(greenwood, index));
    else if (clustered.kind === 'cannot-compute') standardError = clustered;
    else standardError = Math.sqrt(elementAt(elementAt(clustered.variances, index), 0));
    return {
      time: row.time,
      atRisk: row.atRisk,
      events: row.allEvents,
      censored: row.censored,
      survival: here,
      standardError,
      interval:
        typeof standardError === 'number'
          ? survivalInterval(here, { reach: reachOf(index, here, standardError), level, transform })
          : standardError,
    };
  });
  return {
    kind: 'survival',
    steps,
    units: table.units,
    events: table.rows.reduce((sum, row) => sum + row.allEvents, 0),
    clusters: clustered?.kind === 'variance' ? clustered.clusters : null,
    level,
    method: `Kaplan-Meier, ${clustered === null ? "Greenwood's variance" : 'variance by cluster'}, ${transform} limits`,
  };
}

/** S after each row. */
function survivalOf(table: LifeTable): number[] {
  let survival = 1;
  return table.rows.map(({ atRisk, allEvents }) => {
    survival *= (atRisk - allEvents) / atRisk;
    return survival;
  });
}

/** sum(d / (Y (Y - d))) up to each row; infinite once nobody is left. */
function greenwoodSums(table: LifeTable): number[] {
  let sum = 0;
  return table.rows.map(({ atRisk, allEvents }) => {
    if (allEvents > 0) sum += allEvents / (atRisk * (atRisk - allEvents));
    return sum;
  });
}
