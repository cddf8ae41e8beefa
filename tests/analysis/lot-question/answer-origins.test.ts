import { describe, expect, it } from 'vitest';
import { answerOrigins } from '@/lib/analysis/lot-question/answer-origins';
import { judgeOrigins } from '@/lib/analysis/lot-question/judge-origins';
import type { OriginsAnswer } from '@/lib/analysis/lot-question/judged-origin';
import { materialLots, materialSources, spawnMakers } from '@/lib/analysis/lot-question/origin-kinds';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { fitHere } from '../adjusted/story-data';
import { simulatedOrigins } from './simulated-origins';

const network = { seed: 7, makers: 4, lotsPerMaker: 5, batchesPerLot: 12 };

function called(answer: OriginsAnswer): string[] {
  if (answer.kind !== 'judged') throw new Error(answer.reason);
  return answer.origins.filter(({ verdict }) => verdict === 'loses-more').map(({ origin }) => origin);
}
const maker = (lots: Readonly<Record<string, string>>) => new Map(Object.entries(lots));

describe('answerOrigins', () => {
  it('calls out the maker whose lots all lose more, and no other', async () => {
    const { batches, makers, bad } = simulatedOrigins({ ...network, badMaker: 1.3 });
    const answer = await judgeOrigins(batches, spawnMakers(maker(makers.spawn)), fitHere);
    expect(called(answer)).toEqual([bad.maker]);
    expect(answer).toMatchObject({ origins: expect.arrayContaining([expect.objectContaining({ lots: 5 })]) });
  });

  it('calls out the material lot that loses far more, and no other', async () => {
    const { batches, bad } = simulatedOrigins({ ...network, badMaterial: 2.1 });
    expect(called(await judgeOrigins(batches, materialLots, fitHere))).toEqual([bad.materialLot]);
  });

  it('calls out the source whose material all loses more, and no other', async () => {
    const { batches, makers, bad } = simulatedOrigins({ ...network, badSource: 1.5 });
    const answer = await judgeOrigins(batches, materialSources(maker(makers.material)), fitHere);
    expect(called(answer)).toEqual([bad.source]);
  });

  it('calls out nothing where lots differ as lots do, in whatever order they were entered', async () => {
    const { batches, makers } = simulatedOrigins(network);
    const { answers, badSpawnLots } = await answerOrigins(batches, makers, fitHere);
    expect(badSpawnLots).toEqual([]);
    for (const answer of Object.values(answers)) expect(called(answer)).toEqual([]);
    const mixed = seededRandom(3).shuffle(batches);
    expect(await judgeOrigins(mixed, materialLots, fitHere)).toEqual(answers.materialLots);
  }, 60_000);

  it('does not blame the straw that a bad lot of spawn went onto', async () => {
    const { batches, makers } = simulatedOrigins({ ...network, badSpawn: 3 });
    const straw = (answer: OriginsAnswer) =>
      answer.kind === 'judged' ? answer.origins.find(({ origin }) => origin === 'straw 0-0') : undefined;
    const withAll = straw(await judgeOrigins(batches, materialLots, fitHere));
    expect(withAll?.ratio).toBeGreaterThan(1.5);
    const { answers, badSpawnLots } = await answerOrigins(batches, makers, fitHere);
    expect(badSpawnLots).toEqual(['lot 00']);
    expect(straw(answers.materialLots)?.ratio).toBeLessThan(1.5);
    expect(straw(answers.materialLots)?.batches).toBeLessThan(withAll?.batches ?? 0);
    expect(called(answers.materialLots)).toEqual([]);
    expect(called(answers.materialSources)).toEqual([]);
    expect(called(answers.spawnMakers)).toEqual([]);
  }, 60_000);

  it('judges a maker without its lot that is called out itself, and names that lot', async () => {
    const { batches, makers } = simulatedOrigins({ ...network, badSpawn: 3 });
    const first = (answer: OriginsAnswer) =>
      answer.kind === 'judged' ? answer.origins.find(({ origin }) => origin === 'maker 0') : undefined;
    const withAll = first(await judgeOrigins(batches, spawnMakers(maker(makers.spawn)), fitHere));
    const { answers, apart } = await answerOrigins(batches, makers, fitHere);
    expect(apart).toEqual({ spawnMakers: { 'maker 0': ['lot 00'] }, materialSources: {} });
    expect(first(answers.spawnMakers)?.lots).toBe(4);
    expect(first(answers.spawnMakers)?.ratio).toBeLessThan((withAll?.ratio ?? 0) / 1.2);
  }, 60_000);

  it('judges a source without its lot of material that is called out itself', async () => {
    const { batches, makers, bad } = simulatedOrigins({ ...network, badMaterial: 2.1 });
    const { answers, apart } = await answerOrigins(batches, makers, fitHere);
    expect(called(answers.materialLots)).toEqual([bad.materialLot]);
    expect(apart.materialSources).toEqual({ 'source 1': [bad.materialLot] });
    const [lots, sources] = [answers.materialLots, answers.materialSources];
    if (lots.kind === 'cannot' || sources.kind === 'cannot') throw new Error('not judged');
    const own = lots.origins.filter(
      ({ origin }) => makers.material[origin] === 'source 1' && origin !== bad.materialLot,
    );
    expect(sources.origins.find(({ origin }) => origin === 'source 1')).toMatchObject({
      lots: own.length,
      batches: own.reduce((sum, lot) => sum + lot.batches, 0),
    });
  }, 60_000);

  it('still calls out a maker whose lots all lose more, some of them so much that they are called out themselves', async () => {
    for (const badMaker of [1.3, 2.5]) {
      const { batches, makers, bad } = simulatedOrigins({ ...network, badMaker });
      const { answers } = await answerOrigins(batches, makers, fitHere);
      expect(called(answers.spawnMakers)).toEqual([bad.maker]);
    }
  }, 60_000);

  it('does not judge a maker by fewer than three lots, and says so; one bad lot does not make a bad maker', async () => {
    const { batches, makers } = simulatedOrigins({ ...network, badMaker: 2 });
    const few = Object.entries(makers.spawn).filter(
      ([lot, name]) => name !== 'maker 0' || lot === 'lot 00' || lot === 'lot 04',
    );
    const kind = spawnMakers(new Map(few));
    const answer = await judgeOrigins(batches, kind, fitHere);
    if (answer.kind !== 'judged') throw new Error(answer.reason);
    const first = answer.origins.find(({ origin }) => origin === 'maker 0');
    expect(first).toMatchObject({ lots: 2, verdict: 'too-few-lots', falseDiscovery: 1 });
    expect(first?.ratio).toBeGreaterThan(1);
    expect(called(answer)).toEqual([]);
    expect(answer.leftOut).toBe(batches.filter((batch) => kind.originOf(batch) === undefined).length);
  });

  it('says why when there is nobody to compare with', async () => {
    const { batches } = simulatedOrigins(network);
    const one = new Map(batches.map(({ spawnLot }) => [spawnLot, 'the only maker']));
    expect(await judgeOrigins(batches, spawnMakers(one), fitHere)).toEqual({
      kind: 'cannot',
      reason: 'too-few-lots',
    });
  });
});
