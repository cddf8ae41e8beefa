import { betweenVariance } from '@/lib/stats/pooling/between-variance';
import { confidencePrediction } from '@/lib/stats/pooling/confidence-prediction';
import { pooledMeanAt } from '@/lib/stats/pooling/pooled-mean';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import type { LevelRow } from './calibration-row';
import { coverageRow } from './rejection-row';

/** Sampling variances of sites run through in this order: the least certain has 16 times that of the best. */
const VARIANCES = [0.05, 0.4, 0.1, 0.8, 0.2] as const;

/** Sites whose true logits vary by `spread` around a mean: is the mean, and a further site, where it is said to be? */
export function poolingCalibration(replicates: number): LevelRow[] {
  return [3, 6, 12, 30, 60].flatMap((count) =>
    [0, 0.3, 0.8].flatMap((spread) => {
      const random = seededRandom(11_000 + count * 10 + Math.round(spread * 10));
      const held = { mean: [] as boolean[], prediction: [] as boolean[], plain: [] as boolean[] };
      for (let round = 0; round < replicates; round += 1) {
        const sites = Array.from({ length: count }, (_, index) => {
          const variance = VARIANCES[index % VARIANCES.length] ?? 0.1;
          const truth = -2 + spread * random.normal();
          return { label: String(index), variance, estimate: truth + Math.sqrt(variance) * random.normal() };
        });
        const pooled = pooledMeanAt(sites, betweenVariance(sites, 'reml'), 0.95);
        if (pooled.kind === 'cannot-compute') continue;
        const within = ({ low, high }: { low: number; high: number }, value: number) =>
          low <= value && value <= high;
        held.mean.push(within(pooled.interval, -2));
        const further = -2 + spread * random.normal();
        if (pooled.prediction.kind === 'prediction') {
          held.plain.push(within(pooled.prediction.hartungKnapp, further));
        }
        const prediction = confidencePrediction(sites, 0.95);
        if (prediction.kind === 'interval') held.prediction.push(within(prediction, further));
      }
      const setting = `${count} sites, true logits vary by ${spread}`;
      return [
        coverageRow('pooled mean, REML with Hartung-Knapp', setting, held.mean),
        coverageRow('prediction, confidence distribution', setting, held.prediction),
        coverageRow('prediction, between-site variance taken as known', setting, held.plain),
      ];
    }),
  );
}
