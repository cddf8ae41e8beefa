import { type SeededRandom, seededRandom } from '@/lib/stats/random/seeded-random';
import {
  CLUSTERS,
  CORRELATIONS,
  type CoverageRow,
  countOutcomes,
  type Outcome,
  RATES,
  type Setting,
} from './calibration-row';

/** Simulates one data set and says whether the interval held the truth. */
export type Replicate = (random: SeededRandom, setting: Setting) => Outcome;

export type StudyPlan = {
  readonly method: string;
  readonly replicates: number;
  readonly seed: number;
  readonly clusters?: readonly number[];
  readonly correlations?: readonly number[];
};

/** Coverage of one interval over clusters x correlation x rate; each setting has its own stream of numbers. */
export function coverageStudy(
  { method, replicates, seed, clusters = CLUSTERS, correlations = CORRELATIONS }: StudyPlan,
  replicate: Replicate,
): CoverageRow[] {
  return clusters.flatMap((count, one) =>
    correlations.map((correlation, two) => ({
      method,
      clusters: count,
      correlation,
      cells: RATES.map((rate, three) => {
        const random = seededRandom(seed * 1_000_000 + one * 10_000 + two * 100 + three);
        const setting = { clusters: count, correlation, rate };
        return countOutcomes(Array.from({ length: replicates }, () => replicate(random, setting)));
      }),
    })),
  );
}
