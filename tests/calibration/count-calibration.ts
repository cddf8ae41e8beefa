import { poissonDensity } from '@/lib/stats/distribution/poisson';
import { adjustPValues } from '@/lib/stats/multiplicity/adjust-p-values';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { observedExpected } from '@/lib/stats/watching/observed-expected';
import type { LevelRow } from './calibration-row';
import { noisePercent } from './rejection-row';

/** Exact coverage of the limits of a Poisson mean, summed over its counts instead of simulated. */
export function observedExpectedCoverage(): LevelRow[] {
  return [0.5, 1, 3, 10, 30, 100].flatMap((mean) => {
    let [midP, exact] = [0, 0];
    for (let count = 0; count <= mean + 12 * Math.sqrt(mean) + 20; count += 1) {
      const answer = observedExpected(count, mean, 0.95);
      if (answer.kind === 'cannot-compute') continue;
      const density = poissonDensity(count, mean);
      if (answer.interval.low <= 1 && 1 <= answer.interval.high) midP += density;
      if (answer.exactInterval.low <= 1 && 1 <= answer.exactInterval.high) exact += density;
    }
    const setting = `${mean} events expected`;
    const found = (share: number) => `${(100 * share).toFixed(1)} %`;
    return [
      {
        method: 'observed / expected, mid-P limits',
        setting,
        stated: '95 % (93 to 97)',
        found: found(midP),
        holds: midP >= 0.93 && midP <= 0.97,
      },
      {
        method: 'observed / expected, exact limits',
        setting,
        stated: 'at least 95 %',
        found: found(exact),
        holds: exact >= 0.95 - 1e-9,
      },
    ];
  });
}

/** Twenty comparisons, of which `real` have an effect: how often a false claim is made (Holm), or its share (BH). */
export function multiplicityLevels(replicates: number): LevelRow[] {
  return [0, 5].flatMap((real) => {
    const random = seededRandom(9_000 + real);
    let [families, shares] = [0, 0];
    for (let round = 0; round < replicates; round += 1) {
      const pValues = Array.from({ length: 20 }, (_, index) =>
        index < real ? random.next() * 1e-3 : random.next(),
      );
      const falseClaims = (adjusted: (number | null)[]) =>
        adjusted.filter((p, index) => p !== null && p <= 0.05 && index >= real).length;
      const claims = (adjusted: (number | null)[]) => adjusted.filter((p) => p !== null && p <= 0.05).length;
      if (falseClaims(adjustPValues(pValues, 'holm')) > 0) families += 1;
      const discovered = adjustPValues(pValues, 'benjamini-hochberg');
      shares += falseClaims(discovered) / Math.max(1, claims(discovered));
    }
    const row = (method: string, count: number): LevelRow => ({
      method,
      setting: `20 comparisons, ${real} with an effect`,
      stated: 'at most 5 %',
      found: `${((100 * count) / replicates).toFixed(1)} %`,
      holds: (100 * count) / replicates <= 5 + noisePercent(5, replicates),
    });
    return [row('Holm, any false claim', families), row('Benjamini-Hochberg, share of false claims', shares)];
  });
}
