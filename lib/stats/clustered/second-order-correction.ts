import { elementAt } from '../element-at';
import { choleskyOf, inverseOfFactor } from '../mixed/linear-algebra/small-matrix';
import type { ClusterCount } from './cluster-counts';

/**
 * What Pearson's chi-square of a table of groups by outcome is inflated by when units come in clusters: the mean of
 * its generalised design effects, and Satterthwaite's degrees of freedom (sum of them)^2 / (sum of their squares).
 *
 * The design effects are the eigenvalues of (C' D^-1 C / N)^-1 C' D^-1 V D^-1 C, where D holds the shares of the
 * cells, V is their covariance between clusters and C spans the interaction of group and outcome.
 * Source: Rao & Scott (1984), Annals of Statistics 12:46-60 (citation from memory).
 * @param members the clusters of each group; each group with both outcomes.
 */
export function secondOrderCorrection(members: readonly (readonly ClusterCount[])[]): {
  meanEffect: number;
  effectiveDf: number;
} {
  const groups = members.length;
  const size = groups - 1;
  const k = members.reduce((count, own) => count + own.length, 0);
  const shares = cellShares(members);
  const contrast = (group: number, column: number) => (group === column ? 1 : 0) - 1 / groups;

  const denominator = new Float64Array(size * size);
  const numerator = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j < size; j += 1) {
      shares.cells.forEach((cell, group) => {
        const weight = (1 / cell.events + 1 / cell.others) / shares.units;
        denominator[i * size + j] =
          elementAt(denominator, i * size + j) + contrast(group, i) * contrast(group, j) * weight;
      });
    }
  }
  // Score of a cluster with x events of n in group g: its cells over their shares, less n times the mean cell, which
  // adds up to 0 over the two outcomes of every group.
  members.forEach((own, group) => {
    const cell = elementAt(shares.cells, group);
    for (const { events, trials } of own) {
      const score = (events / cell.events - (trials - events) / cell.others) / shares.units;
      for (let i = 0; i < size; i += 1) {
        for (let j = 0; j < size; j += 1) {
          numerator[i * size + j] =
            elementAt(numerator, i * size + j) +
            (k / (k - 1)) * score * score * contrast(group, i) * contrast(group, j);
        }
      }
    }
  });

  const factor = choleskyOf(denominator, size);
  const inverse = factor ? inverseOfFactor(factor, size) : new Float64Array(size * size);
  const effects = product(inverse, numerator, size);
  let trace = 0;
  let traceOfSquare = 0;
  for (let i = 0; i < size; i += 1) {
    trace += elementAt(effects, i * size + i);
    for (let j = 0; j < size; j += 1) {
      traceOfSquare += elementAt(effects, i * size + j) * elementAt(effects, j * size + i);
    }
  }
  return { meanEffect: trace / size, effectiveDf: trace ** 2 / traceOfSquare };
}

/** Shares of all units that are events, and that are not, of each group. */
function cellShares(members: readonly (readonly ClusterCount[])[]) {
  const counts = members.map((own) => ({
    events: own.reduce((sum, cluster) => sum + cluster.events, 0),
    trials: own.reduce((sum, cluster) => sum + cluster.trials, 0),
  }));
  const units = counts.reduce((sum, count) => sum + count.trials, 0);
  const cells = counts.map(({ events, trials }) => ({
    events: events / units,
    others: (trials - events) / units,
  }));
  return { units, cells };
}

function product(a: Float64Array, b: Float64Array, size: number): Float64Array {
  const result = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j < size; j += 1) {
      let sum = 0;
      for (let l = 0; l < size; l += 1) sum += elementAt(a, i * size + l) * elementAt(b, l * size + j);
      result[i * size + j] = sum;
    }
  }
  return result;
}
