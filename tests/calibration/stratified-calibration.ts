import { type SeededRandom, seededRandom } from '@/lib/stats/random/seeded-random';
import { breslowDay } from '@/lib/stats/stratified/breslow-day';
import { cochranMantelHaenszel } from '@/lib/stats/stratified/cochran-mantel-haenszel';
import { mantelHaenszelOddsRatio } from '@/lib/stats/stratified/mantel-haenszel-odds-ratio';
import { mantelHaenszelRiskDifference } from '@/lib/stats/stratified/mantel-haenszel-risk-difference';
import { mantelHaenszelRiskRatio } from '@/lib/stats/stratified/mantel-haenszel-risk-ratio';
import type { Stratum } from '@/lib/stats/stratified/stratum';
import type { CoverageRow, LevelRow, Outcome, Setting } from './calibration-row';
import { outcomeOf } from './calibration-row';
import { clusterSize } from './cluster-samples';
import { coverageStudy } from './coverage-study';
import { rejectionRow } from './rejection-row';

/** Strata of independent units with base rates from half to twice `rate`, the first group's odds times `odds`. */
function strataOf(random: SeededRandom, { clusters, rate }: Setting, odds: number): Stratum[] {
  return Array.from({ length: clusters }, (_, index) => {
    const base = rate * (0.5 + (index % 4) * 0.25);
    const shifted = (odds * base) / (1 - base + odds * base);
    const [units1, units2] = [2 * clusterSize(index), 2 * clusterSize(index + 2)];
    return {
      label: String(index),
      events1: random.binomial(units1, shifted),
      units1,
      events2: random.binomial(units2, base),
      units2,
    };
  });
}

type Ratio = typeof mantelHaenszelRiskRatio;

/** With the same risk in both groups of every stratum the ratios are 1 and the difference is 0. */
export function stratifiedCoverage(replicates: number): CoverageRow[] {
  const ratio = (method: string, estimate: Ratio, odds: number, seed: number) =>
    coverageStudy({ method, replicates, seed, correlations: [0] }, (random, setting): Outcome => {
      const answer = estimate(strataOf(random, setting, odds), 0.95);
      return answer.kind === 'cannot-compute' ? 'no-answer' : outcomeOf(odds, answer.interval);
    });
  return [
    ...ratio(
      'Mantel-Haenszel odds ratio (truth 2), strata of independent units',
      mantelHaenszelOddsRatio,
      2,
      31,
    ),
    ...ratio(
      'Mantel-Haenszel risk ratio (truth 1), strata of independent units',
      mantelHaenszelRiskRatio,
      1,
      32,
    ),
    ...coverageStudy(
      {
        method: 'Mantel-Haenszel risk difference (truth 0), strata of independent units',
        replicates,
        seed: 33,
        correlations: [0],
      },
      (random, setting): Outcome => {
        const answer = mantelHaenszelRiskDifference(strataOf(random, setting, 1), 0.95);
        return answer.kind === 'cannot-compute' ? 'no-answer' : outcomeOf(0, answer.interval);
      },
    ),
  ];
}

/** Both tests under their null hypothesis. */
export function stratifiedLevels(replicates: number): LevelRow[] {
  return [3, 12, 60].flatMap((clusters) =>
    [0.05, 0.2].flatMap((rate) => {
      const random = seededRandom(34_000 + clusters * 100 + Math.round(rate * 100));
      const setting = `${clusters} strata, rate ${100 * rate} %`;
      const draw = (odds: number) => strataOf(random, { clusters, correlation: 0, rate }, odds);
      const pValues = (test: (strata: Stratum[]) => { kind: string; pValue?: number }, odds: number) =>
        Array.from({ length: replicates }, () => test(draw(odds)).pValue ?? null);
      return [
        rejectionRow(
          'Cochran-Mantel-Haenszel test',
          setting,
          pValues((strata) => cochranMantelHaenszel(strata, false), 1),
        ),
        rejectionRow(
          "Breslow-Day test with Tarone's correction",
          setting,
          pValues((strata) => breslowDay(strata, true), 2),
        ),
      ];
    }),
  );
}
