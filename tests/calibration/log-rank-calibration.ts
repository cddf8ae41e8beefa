import { seededRandom } from '@/lib/stats/random/seeded-random';
import { logRank } from '@/lib/stats/survival/log-rank';
import { CORRELATIONS, type LevelRow } from './calibration-row';
import { watchedRuns } from './incidence-calibration';
import { rejectionRow } from './rejection-row';

/** Runs take two methods in turn that do not differ: how often does the clustered test say they do? */
export function logRankCalibration(replicates: number): LevelRow[] {
  return [8, 12, 30, 60].flatMap((clusters) =>
    CORRELATIONS.flatMap((correlation) =>
      [0.1, 0.4].map((rate) => {
        const random = seededRandom(61_000 + Math.round(clusters * 1000 + correlation * 100 + rate * 10));
        const pValues = Array.from({ length: replicates }, () => {
          const followUps = watchedRuns(random, { clusters, correlation, rate }).map((followUp) => ({
            ...followUp,
            cause: followUp.cause === 'contaminated' ? followUp.cause : null,
            group: Number(followUp.cluster?.slice(4)) % 2 === 0 ? 'A' : 'B',
          }));
          const test = logRank(followUps, 'clustered');
          return test.kind === 'test' ? test.pValue : null;
        });
        return rejectionRow(
          'log-rank test, variance by run',
          `${clusters} runs, correlation ${correlation}, rate ${100 * rate} %`,
          pValues,
        );
      }),
    ),
  );
}
