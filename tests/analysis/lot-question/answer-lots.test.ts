import { describe, expect, it } from 'vitest';
import type { ModelBatch } from '@/lib/analysis/adjusted/model-batch';
import { answerLots } from '@/lib/analysis/lot-question/answer-lots';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { fitHere, storyData } from '../adjusted/story-data';
import { simulatedLots } from './simulated-lots';

async function judged(batches: readonly ModelBatch[]) {
  const answer = await answerLots(batches, fitHere);
  if (answer.kind !== 'judged') throw new Error(answer.reason);
  return answer.lots;
}

const network = { seed: 41, lots: 16, batchesPerLot: 14, lotDeviation: 0.25, badLogit: 2.1 };

describe('answerLots', () => {
  it('calls out the one lot that loses far more than its sites and methods would, and no other', async () => {
    const lots = await judged(simulatedLots(network));
    expect(lots.filter(({ verdict }) => verdict === 'loses-more').map(({ lotId }) => lotId)).toEqual([
      'lot 00',
    ]);
    expect(lots.find(({ lotId }) => lotId === 'lot 00')?.low).toBeGreaterThan(1);
  });

  it('calls out nothing where lots differ as lots do', async () => {
    const lots = await judged(simulatedLots({ ...network, badLogit: 0 }));
    expect(lots.filter(({ verdict }) => verdict === 'loses-more')).toEqual([]);
    expect(lots).toHaveLength(16);
  });

  it('finds the bad lot of the demo, and no other', async () => {
    const lots = await judged(storyData().batches);
    const called = lots.filter(({ verdict }) => verdict === 'loses-more').map(({ lotId }) => lotId);
    expect(called).toEqual(['S-PEARL-07']);
  });

  it('leaves out batches whose lot nobody recorded, and says how many', async () => {
    const batches = simulatedLots({ ...network, badLogit: 0 }).map((batch, at) =>
      at < 5 ? { ...batch, spawnLot: `unknown ${batch.id}` } : batch,
    );
    expect(await answerLots(batches, fitHere)).toMatchObject({ kind: 'judged', leftOut: 5 });
  });

  it('does not blame a lot for the method it was used with', async () => {
    const all = simulatedLots({ ...network, badLogit: 0, lotDeviation: 0 });
    const fermented = all.map((batch) =>
      batch.methodKey === 'ferment' ? { ...batch, spawnLot: `${batch.spawnLot} f` } : batch,
    );
    const lots = await judged(fermented);
    expect(lots.filter(({ verdict }) => verdict === 'loses-more')).toEqual([]);
  });

  it('does not depend on the order in which batches were entered', async () => {
    const batches = simulatedLots({ ...network, lots: 8, batchesPerLot: 6 });
    expect(await judged(seededRandom(3).shuffle(batches))).toEqual(await judged(batches));
  });

  it('says why when there is too little to compare', async () => {
    const batches = simulatedLots({ ...network, lots: 3 });
    expect(await answerLots(batches, fitHere)).toEqual({ kind: 'cannot', reason: 'too-few-lots' });
    const clean = simulatedLots(network).map((batch) => ({ ...batch, contaminated: 0 }));
    expect(await answerLots(clean, fitHere)).toEqual({ kind: 'cannot', reason: 'no-contamination' });
  });
});
