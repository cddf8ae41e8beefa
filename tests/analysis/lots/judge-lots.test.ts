import { describe, expect, it } from 'vitest';
import { answerRequest } from '@/lib/analysis/fitting/answer-request';
import { judgeLots } from '@/lib/analysis/lots/judge-lots';
import type { LotBatch } from '@/lib/analysis/lots/lot-batch';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { simulatedLots } from './simulated-lots';

const fitHere = async (request: Parameters<typeof answerRequest>[0]) => answerRequest(request);

async function judged(batches: readonly LotBatch[]) {
  const answer = await judgeLots(batches, fitHere);
  if (answer.kind !== 'judged') throw new Error(answer.reason);
  return answer.lots;
}

const network = { seed: 41, lots: 16, batchesPerLot: 14, lotDeviation: 0.25, badLogit: 2.1 };

describe('judgeLots', () => {
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

  it('does not blame a lot for the method it was used with', async () => {
    const all = simulatedLots({ ...network, badLogit: 0, lotDeviation: 0 });
    const fermented = all.map((batch) =>
      batch.methodKey === 'ferment' ? { ...batch, lotId: `${batch.lotId} f` } : batch,
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
    expect(await judgeLots(batches, fitHere)).toEqual({ kind: 'cannot', reason: 'too-few-lots' });
    const clean = simulatedLots(network).map((batch) => ({ ...batch, contaminated: 0 }));
    expect(await judgeLots(clean, fitHere)).toEqual({ kind: 'cannot', reason: 'no-contamination' });
  });
});
