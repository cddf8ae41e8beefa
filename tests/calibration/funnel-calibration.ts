import { seededRandom } from '@/lib/stats/random/seeded-random';
import { overdispersedFunnelLimit } from '@/lib/stats/watching/exact-funnel-limit';
import { funnel } from '@/lib/stats/watching/funnel';
import type { LevelRow } from './calibration-row';
import { clusterRate, clusterSize } from './cluster-samples';
import { noisePercent } from './rejection-row';

/** Sites that differ by no more than chance and their usual spread: how many are outside the 95 % limits? */
export function funnelCalibration(replicates: number): LevelRow[] {
  return [6, 12, 24, 60].flatMap((count) =>
    [0, 0.02, 0.05].flatMap((correlation) =>
      [0.05, 0.2].map((rate): LevelRow => {
        const random = seededRandom(10_500 + Math.round(count * 1000 + correlation * 100 + rate * 10));
        let [outside, all] = [0, 0];
        for (let round = 0; round < replicates; round += 1) {
          const sites = Array.from({ length: count }, (_, index) => {
            const units = 5 * clusterSize(index);
            return {
              label: String(index),
              units,
              events: random.binomial(units, clusterRate(random, rate, correlation)),
            };
          });
          const answer = funnel(sites, { winsorise: 0.1 });
          if (answer.kind === 'cannot-compute') continue;
          for (const { units, proportion } of answer.points) {
            const limit = (probability: number) =>
              overdispersedFunnelLimit(answer.target, units, probability, answer.unshrunkBetweenVariance);
            all += 1;
            if (proportion < limit(0.025) || proportion > limit(0.975)) outside += 1;
          }
        }
        const found = (100 * outside) / Math.max(1, all);
        return {
          method: 'funnel, exact limits with additive overdispersion',
          setting: `${count} sites, rate ${100 * rate} %, correlation within sites ${correlation}`,
          stated: 'at most 5 % of sites outside',
          found: `${found.toFixed(1)} %`,
          holds: found <= 7 + noisePercent(5, all),
        };
      }),
    ),
  );
}
