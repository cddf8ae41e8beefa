import { type SeededRandom, seededRandom } from '@/lib/stats/random/seeded-random';
import type { RatioRows } from '@/lib/stats/ratio/cluster-sums';
import { jackknifeRatio } from '@/lib/stats/ratio/jackknife-ratio';
import { ratioOfSums } from '@/lib/stats/ratio/ratio-of-sums';
import { smallSampleRatio } from '@/lib/stats/ratio/small-sample-ratio';
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
      const held = { linearised: [] as boolean[], jackknife: [] as boolean[], smallSample: [] as boolean[] };
      for (let round = 0; round < replicates; round += 1) {
        const input = { ...harvests(random, clusters, correlation), level: 0.95 };
        const within = (answer: { kind: string; interval?: { kind: string; low?: number; high?: number } }) =>
          Number(answer.interval?.low) <= MEAN && MEAN <= Number(answer.interval?.high);
        held.linearised.push(within(ratioOfSums(input)));
        held.jackknife.push(within(jackknifeRatio(input)));
        held.smallSample.push(within(smallSampleRatio(input)));
      }
      const setting = `${clusters} sites of 1 to 9 batches, correlation ${correlation}`;
      return [
        coverageRow('ratio of sums, jackknife with Bell-McCaffrey df', setting, held.smallSample),
        coverageRow('ratio of sums, linearised with clusters - 1 df', setting, held.linearised),
        coverageRow('ratio of sums, jackknife with clusters - 1 df', setting, held.jackknife),
      ];
    }),
  );
}
