import { describe, expect, it } from 'vitest';
import type { PlainFit } from '@/lib/analysis/fitting/plain-fit';
import { tellingExamples } from '@/lib/analysis/loss-question/telling-examples';
import { simulatedLots } from '../lot-question/simulated-lots';

const lots = 12;
const batches = simulatedLots({ seed: 3, lots, batchesPerLot: 4, lotDeviation: 0, badLogit: 0 });
const levels = [...new Set(batches.map(({ spawnLot }) => spawnLot))].sort();

/** A fit in which the first lot lies so many standard errors of 0.3 out, and the others not at all. */
function told(deviations: number, names: readonly string[] = levels) {
  const effects = {
    ...{ term: 'spawn lot', levels: names, modes: names.map((_, at) => (at === 0 ? 0.3 * deviations : 0)) },
    predictionErrorVariances: names.map(() => 0.3 ** 2),
  };
  const fit = { randomEffects: [effects], fitted: batches.map(() => 0.1) } as unknown as PlainFit;
  return tellingExamples(fit, batches, [{ source: 'spawn lot', levels: lots, untold: null }], new Map());
}

describe('what stands out', () => {
  it('is named where it lies beyond chance among all of its source', () => {
    const { examples, noneOut } = told(3);
    expect(examples).toMatchObject([{ source: 'spawn lot', levelId: levels[0], batches: 4 }]);
    expect(noneOut).toEqual([]);
  });

  it('is not named where it would be beyond chance alone, but not among so many: none of its source is', () => {
    // 2.5 standard errors: beyond 1.96 of one, short of 2.87 of twelve.
    expect(told(2.5)).toEqual({ examples: [], noneOut: [{ source: 'spawn lot', levels: lots }] });
  });

  it('is never a batch’s own unrecorded lot', () => {
    const unknown = [`unknown ${batches[0]?.id}`, ...levels.slice(1)];
    expect(told(5, unknown).examples).toEqual([]);
  });
});
