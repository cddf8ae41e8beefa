import { requireOpenProbability } from '../check-argument';
import { chiSquareSurvival } from '../distribution/chi-square';
import { fSurvival } from '../distribution/f';
import { normalUpperQuantile } from '../distribution/normal';
import { elementAt } from '../element-at';
import { ArgumentError, type CannotCompute, cannotCompute, type Interval } from '../outcome';
import { newcombeOfEffectiveSizes } from '../proportion/newcombe-difference';
import { type ClusteredRows, clusterCounts } from './cluster-counts';
import { linearisedProportion } from './linearised-proportion';
import { secondOrderCorrection } from './second-order-correction';

export type GroupProportion = {
  readonly group: string;
  readonly estimate: number;
  readonly variance: number;
  readonly designEffect: number;
  readonly effectiveEvents: number;
  readonly effectiveTrials: number;
  readonly clusters: number;
};

export type ChiSquareComparison = {
  readonly statistic: number;
  readonly df: number;
  readonly pValue: number;
};

export type ClusteredComparison = {
  readonly kind: 'estimate';
  /** In the order in which they first appear. */
  readonly groups: readonly GroupProportion[];
  /** Pearson's chi-square of the effective counts, each group by its own design effect. */
  readonly separate: ChiSquareComparison;
  /** Pearson's chi-square over one pooled design effect, steadier with few clusters to a group. */
  readonly pooled: ChiSquareComparison & { readonly designEffect: number };
  /** Pearson's chi-square with its first- and second-order correction from the clusters' covariance. */
  readonly firstOrder: ChiSquareComparison;
  readonly secondOrder: {
    readonly statistic: number;
    readonly numeratorDf: number;
    readonly denominatorDf: number;
    readonly pValue: number;
  };
  /** With two groups: first minus second, by effective sizes and by the normal interval. */
  readonly difference: DifferenceOfTwo | CannotCompute;
  readonly method: string;
};

export type DifferenceOfTwo = {
  readonly estimate: number;
  readonly standardError: number;
  readonly newcombe: Interval | CannotCompute;
  readonly wald: Interval;
};

/**
 * Compares the proportions of groups of clusters; a cluster belongs to one group.
 *
 * Source: Rao & Scott (1992), Biometrics 48:577-585 for the effective counts; Rao & Scott (1984), Annals of Statistics
 * 12:46-60 for the corrections, the second as an F with denominator degrees of freedom (citation from memory).
 * Fewer than two groups, a group of one cluster, with one outcome throughout or without spread: a reason.
 * @param level of the intervals of a difference, two-sided, 0 < level < 1.
 * @throws ArgumentError as clusterCounts, when group differs in length, or a cluster has two groups.
 */
export function compareClusteredProportions(
  rows: ClusteredRows & { readonly group: readonly string[]; readonly level: number },
): ClusteredComparison | CannotCompute {
  requireOpenProbability('level', rows.level);
  const { clusters } = clusterCounts(rows);
  const groupOf = groupByCluster(rows);
  const labels = [...new Set(clusters.map((cluster) => groupOf.get(cluster.label) ?? ''))];
  if (labels.length < 2) return cannotCompute('no-data', 'There are no two groups with units to compare.');
  const members = labels.map((label) => clusters.filter((cluster) => groupOf.get(cluster.label) === label));
  const groups: GroupProportion[] = [];
  for (const [index, group] of labels.entries()) {
    const own = elementAt(members, index);
    const { estimate, events, trials, variance, designEffect } = linearisedProportion(own);
    if (typeof variance !== 'number') return variance;
    if (typeof designEffect !== 'number') return designEffect;
    if (designEffect === 0) {
      return cannotCompute('no-variation', `All of ${group} has the same proportion, so no spread was seen.`);
    }
    groups.push({
      group,
      estimate,
      variance,
      designEffect,
      effectiveEvents: events / designEffect,
      effectiveTrials: trials / designEffect,
      clusters: own.length,
    });
  }
  const plain = groups.map((group) => ({
    events: group.effectiveEvents * group.designEffect,
    trials: group.effectiveTrials * group.designEffect,
  }));
  const df = labels.length - 1;
  const pearson = pearsonStatistic(plain);
  const effective = groups.map((group) => ({ events: group.effectiveEvents, trials: group.effectiveTrials }));
  const separate = pearsonStatistic(effective);
  const pooledEffect = pooledDesignEffect(groups, plain);
  const pooled = pearson / pooledEffect;
  const { meanEffect, effectiveDf } = secondOrderCorrection(members);
  const numeratorDf = effectiveDf;
  const denominatorDf = effectiveDf * (clusters.length - 1);
  const scaled = pearson / (meanEffect * df);
  return {
    kind: 'estimate',
    groups,
    separate: { statistic: separate, df, pValue: chiSquareSurvival(separate, df) },
    pooled: { statistic: pooled, df, pValue: chiSquareSurvival(pooled, df), designEffect: pooledEffect },
    firstOrder: { statistic: pearson, df, pValue: chiSquareSurvival(pearson / meanEffect, df) },
    secondOrder: {
      statistic: scaled,
      numeratorDf,
      denominatorDf,
      pValue: fSurvival(scaled, numeratorDf, denominatorDf),
    },
    difference: differenceOfTwo(groups, rows.level),
    method: 'Rao-Scott comparison of clustered proportions',
  };
}

function groupByCluster(rows: ClusteredRows & { readonly group: readonly string[] }): Map<string, string> {
  if (rows.group.length !== rows.events.length) {
    throw new ArgumentError('group', `has ${rows.group.length} rows, events ${rows.events.length}`);
  }
  const groupOf = new Map<string, string>();
  rows.group.forEach((group, row) => {
    const label = rows.cluster === undefined ? String(row) : elementAt(rows.cluster, row);
    const known = groupOf.get(label);
    if (known !== undefined && known !== group) {
      throw new ArgumentError(`group[${row}]`, `cluster ${label} is in ${known} as well as in ${group}`);
    }
    groupOf.set(label, group);
  });
  return groupOf;
}

type Counts = { readonly events: number; readonly trials: number };

function pearsonStatistic(groups: readonly Counts[]): number {
  const { events, trials } = sum(groups);
  const common = events / trials;
  return groups.reduce(
    (total, group) =>
      total + (group.events - group.trials * common) ** 2 / (group.trials * common * (1 - common)),
    0,
  );
}

function pooledDesignEffect(groups: readonly GroupProportion[], plain: readonly Counts[]): number {
  const { events, trials } = sum(plain);
  const common = events / trials;
  const total = groups.reduce((soFar, group, index) => {
    const share = elementAt(plain, index).trials / trials;
    const binary = (group.estimate * (1 - group.estimate)) / (common * (1 - common));
    return soFar + (1 - share) * binary * group.designEffect;
  }, 0);
  return total / (groups.length - 1);
}

function sum(groups: readonly Counts[]): Counts {
  return groups.reduce((a, b) => ({ events: a.events + b.events, trials: a.trials + b.trials }));
}

function differenceOfTwo(groups: readonly GroupProportion[], level: number): DifferenceOfTwo | CannotCompute {
  const [first, second, third] = groups;
  if (first === undefined || second === undefined || third !== undefined) {
    return cannotCompute('out-of-range', 'A single difference is given for two groups only.');
  }
  const estimate = first.estimate - second.estimate;
  const standardError = Math.sqrt(first.variance + second.variance);
  const half = normalUpperQuantile((1 - level) / 2) * standardError;
  return {
    estimate,
    standardError,
    newcombe: newcombeOfEffectiveSizes(
      { events: first.effectiveEvents, trials: first.effectiveTrials },
      { events: second.effectiveEvents, trials: second.effectiveTrials },
      level,
    ).interval,
    wald: {
      kind: 'interval',
      low: estimate - half,
      high: estimate + half,
      level,
      method: 'Wald, cluster-robust',
    },
  };
}
