import { tSurvival } from '@/lib/stats/distribution/student-t';
import { clustersNeeded } from '@/lib/stats/planning/clusters-needed';
import { twoMeansSampleSize } from '@/lib/stats/planning/two-means-sample-size';
import { twoProportionsSampleSize } from '@/lib/stats/planning/two-proportions-sample-size';
import { type SeededRandom, seededRandom } from '@/lib/stats/random/seeded-random';
import type { LevelRow } from './calibration-row';
import { clusterRate } from './cluster-samples';

function meanAndVariance(values: readonly number[]): { mean: number; variance: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
  return { mean, variance };
}

/** Two-sided p-value of the t test of two equal groups. */
function tTest(first: readonly number[], second: readonly number[]): number {
  const [one, two] = [meanAndVariance(first), meanAndVariance(second)];
  const error = Math.sqrt((one.variance + two.variance) / first.length);
  if (error === 0) return one.mean === two.mean ? 1 : 0;
  return 2 * tSurvival(Math.abs(one.mean - two.mean) / error, 2 * (first.length - 1));
}

function powerRow(
  method: string,
  setting: string,
  rejected: number,
  replicates: number,
  least: number,
): LevelRow {
  const found = (100 * rejected) / replicates;
  return { method, setting, stated: 'power 80 %', found: `${found.toFixed(1)} %`, holds: found >= least };
}

/** Experiments of the planned size, in which the difference planned for is real: how often is it found? */
export function planningCalibration(replicates: number): LevelRow[] {
  const rows: LevelRow[] = [];
  const means = twoMeansSampleSize({
    difference: 10,
    standardDeviation: 18,
    significance: 0.05,
    power: 0.8,
    design: 'independent',
  });
  if (means.kind === 'sample-size') {
    const random = seededRandom(12_001);
    const group = (mean: number) =>
      Array.from({ length: means.perGroupWhole }, () => mean + 18 * random.normal());
    let rejected = 0;
    for (let round = 0; round < replicates; round += 1) if (tTest(group(0), group(10)) <= 0.05) rejected += 1;
    const setting = `${means.perGroupWhole} batches a group, BE 10 points apart, sd 18`;
    rows.push(powerRow('sample size for two means', setting, rejected, replicates, 77));
  }
  for (const [first, second, correlation] of [
    [0.2, 0.1, 0.05],
    [0.3, 0.15, 0.2],
    [0.4, 0.1, 0.3],
  ] as const) {
    const plan = twoProportionsSampleSize({ first, second, power: 0.8, significance: 0.05, ratio: 1 });
    if (plan.kind === 'cannot-compute') continue;
    const units = 15;
    const needed = clustersNeeded(plan.firstGroup, {
      meanSize: units,
      intraClusterCorrelation: correlation,
      sizeVariation: 0,
    });
    const random = seededRandom(12_100 + Math.round(1000 * first));
    const group = (rate: number, source: SeededRandom) =>
      Array.from(
        { length: needed.clustersPerGroupWhole },
        () => source.binomial(units, clusterRate(source, rate, correlation)) / units,
      );
    let rejected = 0;
    for (let round = 0; round < replicates; round += 1) {
      if (tTest(group(first, random), group(second, random)) <= 0.05) rejected += 1;
    }
    const setting = `${needed.clustersPerGroupWhole} batches of ${units} a group, ${100 * first} % against ${100 * second} %, correlation ${correlation}`;
    rows.push(powerRow('sample size for two clustered proportions', setting, rejected, replicates, 72));
  }
  return rows;
}
