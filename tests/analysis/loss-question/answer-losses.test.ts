import { describe, expect, it } from 'vitest';
import type { ModelBatch } from '@/lib/analysis/adjusted/model-batch';
import { answerLosses } from '@/lib/analysis/loss-question/answer-losses';
import type { LossSource, VariationPart } from '@/lib/analysis/loss-question/losses-answer';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { fitHere, storyData } from '../adjusted/story-data';
import { simulatedLots } from '../lot-question/simulated-lots';

const { raw, batches: story } = storyData();

const ask = (batches: readonly ModelBatch[], codes = new Map<string, string>()) =>
  answerLosses({ batches, raw: raw.total, codes, levelledOut: { material: false, season: false } }, fitHere);

function sourceIn(part: VariationPart, source: LossSource) {
  if (part.kind === 'cannot') throw new Error(part.reason);
  return part.sources.find((one) => one.source === source);
}

const network = { seed: 7, lots: 12, batchesPerLot: 12, lotDeviation: 0.8, badLogit: 0 };

describe('answerLosses', () => {
  it('finds in the demo that site, spawn lot and treatment run matter, and names the bad lot first and no run of hundreds', async () => {
    const { contamination, examples, noneOut } = await ask(story, new Map([['S-PEARL-07', 'S-PEARL-07']]));
    for (const source of ['site', 'spawn lot', 'run'] as const)
      expect(sourceIn(contamination, source)).toMatchObject({ kind: 'share', told: true });
    expect(examples[0]).toMatchObject({ source: 'spawn lot', code: 'S-PEARL-07' });
    expect(examples[0]?.found).toBeGreaterThan(2 * (examples[0]?.expected ?? 0));
    expect(examples[0]?.odds.low).toBeGreaterThan(1);
    expect(examples.map(({ source }) => source)).not.toContain('run');
    expect(noneOut).toContainEqual({ source: 'run', levels: 407 });
  }, 60_000);

  it('gives shares of 100 together, each with its limits', async () => {
    const { contamination } = await ask(simulatedLots(network));
    if (contamination.kind === 'cannot') throw new Error(contamination.reason);
    const shares = contamination.sources.flatMap((one) => (one.kind === 'share' ? [one] : []));
    expect(shares.reduce((sum, { percent }) => sum + percent.estimate, 0)).toBeCloseTo(100, 6);
    expect(
      shares.every(({ percent }) => percent.low <= percent.estimate && percent.estimate <= percent.high),
    ).toBe(true);
    expect(sourceIn(contamination, 'spawn lot')).toMatchObject({ told: true });
  });

  it('says which sources it cannot tell, and why', async () => {
    const { contamination } = await ask(
      simulatedLots(network).map((batch) => ({
        ...batch,
        spawnLot: `unknown ${batch.id}`,
        materialLot: `straw of ${batch.siteId}`,
      })),
    );
    expect(sourceIn(contamination, 'spawn lot')).toMatchObject({ kind: 'cannot', reason: 'not-recorded' });
    expect(sourceIn(contamination, 'material lot')).toMatchObject({
      kind: 'cannot',
      reason: 'same-as',
      sameAs: 'site',
    });
    const oneLot = await ask(simulatedLots(network));
    expect(sourceIn(oneLot.contamination, 'material lot')).toMatchObject({ reason: 'few-levels' });
  });

  it('cannot tell a run from its batch where each batch has a run of its own', async () => {
    const own = simulatedLots(network).map((batch) => ({ ...batch, run: `run:${batch.id}` }));
    expect(sourceIn((await ask(own)).contamination, 'run')).toMatchObject({ reason: 'each-own' });
  });

  it('refuses an answer from too little, or where nothing was lost', async () => {
    const batches = simulatedLots(network);
    expect((await ask(batches.slice(0, 20))).contamination).toEqual({ kind: 'cannot', reason: 'too-few' });
    const clean = batches.map((batch) => ({ ...batch, contaminated: 0 }));
    expect((await ask(clean)).contamination).toEqual({ kind: 'cannot', reason: 'no-contamination' });
  });

  it('does not depend on the order in which batches were entered', async () => {
    const batches = simulatedLots({ ...network, lots: 8, batchesPerLot: 6 });
    expect(await ask(seededRandom(3).shuffle(batches))).toEqual(await ask(batches));
  });
});
