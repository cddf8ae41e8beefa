import { chiSquareSurvival } from '../distribution/chi-square';
import { fSurvival } from '../distribution/f';
import { elementAt } from '../element-at';
import { type CannotCompute, cannotCompute } from '../outcome';
import { byCluster, checkFollowUps } from './follow-up';
import { groupBy } from './group-by';
import {
  addClusterScores,
  addStratum,
  emptySums,
  type GroupedFollowUp,
  type LogRankSums,
} from './log-rank-sums';
import { quadraticForm } from './quadratic-form';

export type LogRank = {
  readonly kind: 'test';
  readonly groups: readonly string[];
  /** Events observed and expected per group. */
  readonly observed: readonly number[];
  readonly expected: readonly number[];
  /** Covariance of observed - expected that the test used. */
  readonly covariance: readonly (readonly number[])[];
  readonly statistic: number;
  readonly degreesOfFreedom: number;
  /** Of the F distribution of a clustered test; `null` when chi-square was used. */
  readonly denominatorDegreesOfFreedom: number | null;
  readonly pValue: number;
  readonly units: number;
  readonly method: string;
};

/**
 * Log-rank test that all groups have the same hazard of an event (of any cause; to test one cause, pass the others
 * as censored), within strata where given.
 *
 * Independent units: (O - E)' V^- (O - E) on groups with an expectation less 1, V hypergeometric. Clustered: V is
 * the centred sum of squared cluster scores times G / (G - 1), and as in Hotelling's test
 * statistic (G - df) / (df (G - 1)) is referred to F on df and G - groups degrees of freedom, because the spread is
 * judged from few treatment runs.
 *
 * Sources: Mantel (1966), Peto & Peto (1972, J R Stat Soc A 135, 185-207); scores as Lin & Wei (1989, JASA 84,
 * 1074-1078), from memory.
 *
 * @returns the test; `no-variation` with fewer than two groups at risk or no event, `too-few-clusters` when there
 *   are not more clusters than groups.
 * @throws ArgumentError for times below 0 or NaN, counts that are no counts, or a missing cluster.
 */
export function logRank(
  followUps: readonly GroupedFollowUp[],
  variance: 'independent' | 'clustered',
): LogRank | CannotCompute {
  checkFollowUps(followUps);
  const groups = [...new Set(followUps.map(({ group }) => group))].sort();
  const sums = emptySums(groups);
  const strata = groupBy(followUps, ({ stratum }) => stratum ?? '');
  for (const members of strata.values()) {
    addStratum(sums, groups, members);
    if (variance === 'clustered') {
      addClusterScores(sums, groups, members, byCluster(members));
    }
  }
  const tested = groups.map((_, index) => index).filter((index) => elementAt(sums.expected, index) > 0);
  const degreesOfFreedom = tested.length - 1;
  if (degreesOfFreedom < 1) {
    return cannotCompute(
      'no-variation',
      'A comparison needs an event at a time when two groups were watched.',
    );
  }
  const clusters = sums.clusterScores.size;
  const denominator = variance === 'clustered' ? clusters - groups.length : null;
  if (denominator !== null && denominator < 1) {
    return cannotCompute('too-few-clusters', 'The test needs more treatment runs than groups.');
  }
  const covariance = variance === 'clustered' ? scoreCovariance(sums) : sums.covariance;
  const kept = tested.slice(1);
  const excess = kept.map((index) => elementAt(sums.observed, index) - elementAt(sums.expected, index));
  const part = kept.map((row) => kept.map((column) => elementAt(elementAt(covariance, row), column)));
  const statistic = quadraticForm(part, excess);
  if (statistic === null) {
    return cannotCompute('no-variation', 'Observed and expected events cannot differ in these data.');
  }
  return {
    kind: 'test',
    groups,
    observed: sums.observed,
    expected: sums.expected,
    covariance,
    statistic,
    degreesOfFreedom,
    denominatorDegreesOfFreedom: denominator,
    pValue:
      denominator === null
        ? chiSquareSurvival(statistic, degreesOfFreedom)
        : fSurvival(
            (statistic * (clusters - degreesOfFreedom)) / (degreesOfFreedom * (clusters - 1)),
            degreesOfFreedom,
            denominator,
          ),
    units: followUps.reduce((sum, { count = 1 }) => sum + count, 0),
    method: variance === 'clustered' ? 'log-rank test, variance by cluster' : 'log-rank test',
  };
}

function scoreCovariance({ clusterScores, observed }: LogRankSums): number[][] {
  const clusters = clusterScores.size;
  return observed.map((_, row) =>
    observed.map((__, column) => {
      let [sum, rowSum, columnSum] = [0, 0, 0];
      for (const score of clusterScores.values()) {
        sum += elementAt(score, row) * elementAt(score, column);
        rowSum += elementAt(score, row);
        columnSum += elementAt(score, column);
      }
      return ((sum - (rowSum * columnSum) / clusters) * clusters) / (clusters - 1);
    }),
  );
}
