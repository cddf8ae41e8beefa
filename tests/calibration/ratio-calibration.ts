import { type SeededRandom, seededRandom } from '@/lib/stats/random/seeded-random';
import type { RatioRows } from '@/lib/stats/ratio/cluster-sums';
import { ratioOfSums } from '@/lib/stats/ratio/ratio-of-sums';
import { CLUSTERS, CORRELATIONS, type LevelRow } from './calibration-row';
import { clusterSize } from './cluster-samples';
import { coverageRow } from './rejection-row';

/** Biological efficiency 80 % on average, single batches spread by 30 points, part of it shared by their cluster. */
const MEAN = 0.8;
const SPREAD = 0.3;

/** Batches of unequal dry weight in clusters of 1 to 9 batches. */
function harvests(random: SeededRandom, clusters: number, correlation: number): RatioRows {
  const rows = { numerator: [] as number[], denominator: [] as number[], cluster: [] as string[] };
  for (let index = 0; index < clusters; index += 1) {
    const shared = SPREAD * Math.sqrt(correlation) * random.normal();
    for (let batch = 0; batch < Math.ceil(clusterSize(index) / 4); batch += 1) {
      const dryGrams = 4000 * Math.exp(0.4 * random.normal());
      const efficiency = MEAN + shared + SPREAD * Math.sqrt(1 - correlation) * random.normal();
      rows.denominator.push(dryGrams);
      rows.numerator.push(Math.max(0, efficiency * dryGrams));
      rows.cluster.push(`site ${index}`);
    }
  }
  return rows;
}

export function ratioCalibration(replicates: number): LevelRow[] {
  return CLUSTERS.flatMap((clusters) =>
    CORRELATIONS.flatMap((correlation) => {
      const random = seededRandom(5_000 + clusters * 10 + Math.round(correlation * 10));
      const held = { shipped: [] as boolean[], linearised: [] as boolean[] };
      for (let round = 0; round < replicates; round += 1) {
        const answer = ratioOfSums({ ...harvests(random, clusters, correlation), level: 0.95 });
        if (answer.kind === 'cannot-compute') continue;
        const within = (interval: typeof answer.interval) =>
          interval.kind === 'interval' && interval.low <= MEAN && MEAN <= interval.high;
        held.shipped.push(within(answer.interval));
        held.linearised.push(within(answer.linearisedInterval));
      }
      const setting = `${clusters} sites of 1 to 9 batches, correlation ${correlation}`;
      return [
        coverageRow('ratio of sums, jackknife with Bell-McCaffrey df (shipped)', setting, held.shipped),
        coverageRow(
          'ratio of sums, linearised with clusters - 1 df (for comparison)',
          setting,
          held.linearised,
        ),
      ];
    }),
  );
}
