import { logGamma } from '../distribution/gamma';
import { elementAt } from '../element-at';
import type { ClusterCount } from './cluster-counts';

/** How often each distinct count occurs, in increasing order of the count. */
type Tally = readonly { readonly count: number; readonly times: number }[];

/** Runs of more factors than this are added up by the log gamma function. */
const LONG_RUN = 40;

/** From this base / step on, the difference of two log gammas would cancel. */
const FAR_OUT = 1e6;

/**
 * The beta-binomial log-likelihood of all clusters, without the binomial coefficients, as a function of the proportion
 * mu (0 < mu < 1) and the intra-cluster correlation rho (0 <= rho < 1). Clusters with equal counts are done once.
 */
export function profileOfCounts(clusters: readonly ClusterCount[]): (mu: number, rho: number) => number {
  const events = tally(clusters.map((cluster) => cluster.events));
  const others = tally(clusters.map((cluster) => cluster.trials - cluster.events));
  const trials = tally(clusters.map((cluster) => cluster.trials));
  return (mu, rho) => {
    const theta = rho / (1 - rho);
    return risingLogs(mu, theta, events) + risingLogs(1 - mu, theta, others) - risingLogs(1, theta, trials);
  };
}

/** Sum over the tally of times * sum_{j<count} log(base + j step). */
function risingLogs(base: number, step: number, counts: Tally): number {
  let soFar = 0;
  let reached = 0;
  let total = 0;
  for (const { count, times } of counts) {
    soFar += run(base, step, reached, count);
    reached = count;
    total += times * soFar;
  }
  return total;
}

function run(base: number, step: number, from: number, to: number): number {
  if (step === 0) return (to - from) * Math.log(base);
  if (to - from > LONG_RUN) {
    const start = base / step;
    if (start > FAR_OUT) return farRun(base, step, from, to);
    return (to - from) * Math.log(step) + logGamma(start + to) - logGamma(start + from);
  }
  let sum = 0;
  for (let j = from; j < to; j += 1) sum += Math.log(base + j * step);
  return sum;
}

/** The same where from + base / step is large, by Stirling's series with the cancelling parts taken out. */
function farRun(base: number, step: number, from: number, to: number): number {
  const count = to - from;
  const first = base / step + from;
  const last = first + count;
  const bend = (first - 0.5) * Math.log1p(count / first) - count;
  return count * Math.log(base + to * step) + bend + (1 / last - 1 / first) / 12;
}

function tally(counts: readonly number[]): Tally {
  const sorted = [...counts].sort((a, b) => a - b);
  const entries: { count: number; times: number }[] = [];
  sorted.forEach((count, index) => {
    if (index > 0 && count === sorted[index - 1]) elementAt(entries, entries.length - 1).times += 1;
    else entries.push({ count, times: 1 });
  });
  return entries;
}
