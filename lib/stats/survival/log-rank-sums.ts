import { elementAt } from '../element-at';
import type { FollowUp } from './follow-up';
import { groupCounts } from './group-counts';
import type { GroupCounts } from './incidence-influence';
import { anyCause, lifeTable } from './life-table';

export type GroupedFollowUp = FollowUp & {
  readonly group: string;
  /** Compare within these only, e.g. within sites. */
  readonly stratum?: string;
};

/** Sums over event times of one stratum, added into the totals of all. */
export type LogRankSums = {
  /** Per group, in the order of `groups`. */
  readonly observed: number[];
  readonly expected: number[];
  /** Hypergeometric covariance of observed - expected. */
  readonly covariance: number[][];
  /** Score of each cluster: its share of observed - expected, per group. */
  readonly clusterScores: Map<string, number[]>;
};

export function emptySums(groups: readonly string[]): LogRankSums {
  return {
    observed: groups.map(() => 0),
    expected: groups.map(() => 0),
    covariance: groups.map(() => groups.map(() => 0)),
    clusterScores: new Map(),
  };
}

/** Adds the stratum's observed and expected events and their hypergeometric covariance to the sums. */
export function addStratum(
  sums: LogRankSums,
  groups: readonly string[],
  stratum: readonly GroupedFollowUp[],
): void {
  const merged = anyCause(stratum);
  const table = lifeTable(merged, ['any']);
  const counts = groups.map((group) =>
    groupCounts(
      table,
      merged.filter((_, index) => elementAt(stratum, index).group === group),
    ),
  );
  table.rows.forEach(({ atRisk, allEvents }, row) => {
    if (allEvents === 0) return;
    const spread = atRisk > 1 ? (allEvents * (atRisk - allEvents)) / (atRisk - 1) : 0;
    const shares = counts.map((group) => elementAt(group.atRisk, row) / atRisk);
    shares.forEach((share, one) => {
      add(sums.observed, one, eventsIn(elementAt(counts, one), row));
      add(sums.expected, one, allEvents * share);
      shares.forEach((otherShare, other) => {
        const product = one === other ? share * (1 - share) : -share * otherShare;
        add(elementAt(sums.covariance, one), other, spread * product);
      });
    });
  });
}

/**
 * Adds every cluster's score: over the event times, for group g,
 * (e_g - r_g h) - (Y_g / Y) (e - r h), with e events and r at risk in the cluster, h = d / Y the common hazard.
 * The scores of all clusters add up to observed - expected.
 */
export function addClusterScores(
  sums: LogRankSums,
  groups: readonly string[],
  stratum: readonly GroupedFollowUp[],
  clusters: ReadonlyMap<string, readonly GroupedFollowUp[]>,
): void {
  const table = lifeTable(anyCause(stratum), ['any']);
  const ofGroup = (members: readonly GroupedFollowUp[]) =>
    groups.map((group) => groupCounts(table, anyCause(members.filter((member) => member.group === group))));
  const counts = ofGroup(stratum);
  for (const [cluster, members] of clusters) {
    const own = ofGroup(members);
    const score = sums.clusterScores.get(cluster) ?? groups.map(() => 0);
    sums.clusterScores.set(cluster, score);
    table.rows.forEach(({ atRisk, allEvents }, row) => {
      if (allEvents === 0) return;
      const excess = own.map(
        (group) => eventsIn(group, row) - (elementAt(group.atRisk, row) * allEvents) / atRisk,
      );
      const total = excess.reduce((sum, value) => sum + value, 0);
      excess.forEach((value, group) => {
        add(score, group, value - (elementAt(elementAt(counts, group).atRisk, row) / atRisk) * total);
      });
    });
  }
}

function eventsIn(group: GroupCounts, row: number): number {
  return elementAt(elementAt(group.events, row), 0);
}

function add(values: number[], index: number, amount: number): void {
  values[index] = elementAt(values, index) + amount;
}
