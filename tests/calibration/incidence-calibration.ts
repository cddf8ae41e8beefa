import type { SeededRandom } from '@/lib/stats/random/seeded-random';
import { cumulativeIncidence } from '@/lib/stats/survival/cumulative-incidence';
import type { FollowUp } from '@/lib/stats/survival/follow-up';
import { incidenceAt } from '@/lib/stats/survival/incidence-at';
import { type CoverageRow, outcomeOf, type Setting } from './calibration-row';
import { clusterRate, clusterSize } from './cluster-samples';
import { coverageStudy } from './coverage-study';

/** Days of looks, and the share of contaminated units first found at each. */
const LOOKS = [4, 7, 10, 14, 18, 21, 28] as const;
const FOUND_AT = [0.1, 0.25, 0.25, 0.2, 0.1, 0.06, 0.04] as const;
/** Chance that a unit is lost to something else between two looks. */
const LOSS = 0.015;
/** Shares of treatment runs that are still open after this many looks. */
const OPEN_AFTER = [3, 5] as const;
const DAY = 21;

/** True share of units found contaminated by DAY, other losses competing. */
export function trueIncidence(rate: number): number {
  let share = 0;
  LOOKS.forEach((day, look) => {
    if (day <= DAY) share += rate * (FOUND_AT[look] ?? 0) * (1 - LOSS) ** look;
  });
  return share;
}

/** Runs of units; one run in five is open after a few looks, the others are watched to the end. */
export function watchedRuns(random: SeededRandom, { clusters, correlation, rate }: Setting): FollowUp[] {
  return Array.from({ length: clusters }, (_, index) => {
    const chance = clusterRate(random, rate, correlation);
    const looks = index % 5 === 4 ? (OPEN_AFTER[random.integer(OPEN_AFTER.length)] ?? 3) : LOOKS.length;
    return Array.from({ length: clusterSize(index) }, () =>
      watchedUnit(random, chance, looks, `run ${index}`),
    );
  }).flat();
}

function watchedUnit(random: SeededRandom, chance: number, looks: number, cluster: string): FollowUp {
  let found = random.next() < chance ? foundAt(random.next()) : LOOKS.length;
  if (found >= looks) found = LOOKS.length;
  for (let look = 0; look < looks; look += 1) {
    const time = LOOKS[look] ?? 0;
    if (look === found) return { time, cause: 'contaminated', cluster };
    if (random.next() < LOSS) return { time, cause: 'lost', cluster };
  }
  return { time: LOOKS[looks - 1] ?? 0, cause: null, cluster };
}

function foundAt(uniform: number): number {
  let sum = 0;
  return FOUND_AT.findIndex((share) => {
    sum += share;
    return uniform < sum;
  });
}

export function incidenceCalibration(replicates: number): CoverageRow[] {
  return coverageStudy(
    { method: 'cumulative incidence at 21 days, variance by run', replicates, seed: 6 },
    (random, setting) => {
      const curves = cumulativeIncidence(watchedRuns(random, setting), {
        level: 0.95,
        variance: 'clustered',
        causes: ['contaminated', 'lost'],
      });
      if (curves.kind === 'cannot-compute') return 'no-answer';
      const at = incidenceAt(curves, 'contaminated', DAY);
      return at.kind === 'cannot-compute' ? 'no-answer' : outcomeOf(trueIncidence(setting.rate), at.interval);
    },
  );
}
