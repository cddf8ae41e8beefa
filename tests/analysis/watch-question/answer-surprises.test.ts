import { describe, expect, it } from 'vitest';
import type { CountedBatch } from '@/lib/analysis/adjusted/contamination-request';
import { answerSurprises } from '@/lib/analysis/watch-question/answer-surprises';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { fitHere, storyData } from '../adjusted/story-data';
import { simulatedLots } from '../lot-question/simulated-lots';

const quiet = { lots: 16, batchesPerLot: 14, lotDeviation: 0.25, badLogit: 0 };
const ask = (batches: readonly CountedBatch[]) => answerSurprises({ batches, yieldDays: {} }, fitHere);

describe('batches far outside what is to be expected of them', () => {
  it('are few where batches differ as batches do: at most one in two hundred over five networks', async () => {
    let [called, all] = [0, 0];
    for (const seed of [1, 2, 3, 4, 5]) {
      const batches = simulatedLots({ ...quiet, seed });
      called += (await ask(batches)).losses.length;
      all += batches.length;
    }
    expect(all).toBe(1120);
    expect(called / all).toBeLessThanOrEqual(1 / 200);
  });

  it('are those that lost nearly everything, named with how many would be usual', async () => {
    const batches = simulatedLots({ ...quiet, seed: 6 });
    const struck = batches.map((batch, at) => (at === 50 ? { ...batch, contaminated: batch.units } : batch));
    const { losses } = await ask(struck);
    const found = losses.find(({ batchId }) => batchId === struck[50]?.id);
    expect(found).toMatchObject({ found: struck[50]?.units, on: '2026-04-13' });
    expect(found?.mostLikely).toBeLessThan(found?.found ?? 0);
  });

  it('do not depend on the order of the batches', async () => {
    const batches = storyData().batches;
    const first = await answerSurprises({ batches, yieldDays: {} }, fitHere);
    const second = await answerSurprises(
      { batches: seededRandom(3).shuffle([...batches]), yieldDays: {} },
      fitHere,
    );
    const ids = (answer: typeof first) => answer.losses.map(({ batchId }) => batchId).sort();
    expect(ids(second)).toEqual(ids(first));
    expect(second.lotLast).toEqual(first.lotLast);
  });

  it('are none where there is too little to expect anything from', async () => {
    expect(await ask(simulatedLots({ ...quiet, seed: 7 }).slice(0, 20))).toMatchObject({
      losses: [],
      yields: [],
    });
  });
});
