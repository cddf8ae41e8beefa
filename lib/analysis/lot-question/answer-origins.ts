import type { ModelBatch } from '../adjusted/model-batch';
import type { Fit } from '../fitting/fit';
import { judgeOrigins } from './judge-origins';
import type { OriginsAnswer } from './judged-origin';
import { materialLots, materialSources, spawnLots, spawnMakers } from './origin-kinds';

/** Makers of spawn and sources of material by the id of a lot, as the records name them. */
export type LotMakers = {
  readonly spawn: Readonly<Record<string, string>>;
  readonly material: Readonly<Record<string, string>>;
};

export const originQuestions = ['materialLots', 'spawnMakers', 'materialSources'] as const;
export type OriginQuestion = (typeof originQuestions)[number];

export type AllOrigins = {
  readonly answers: Readonly<Record<OriginQuestion, OriginsAnswer>>;
  /** Spawn lots called out: what their batches lost says nothing about the material, which is judged without them. */
  readonly badSpawnLots: readonly string[];
};

/**
 * Material lots, makers of spawn and sources of material, each against what its sites and methods would lose anyway. A lot of
 * spawn often goes onto one load of straw; where the spawn is called out, the straw is judged by its other batches.
 */
export async function answerOrigins(
  batches: readonly ModelBatch[],
  makers: LotMakers,
  fitModel: Fit,
): Promise<AllOrigins> {
  const spawn = await judgeOrigins(batches, spawnLots, fitModel);
  const badSpawnLots =
    spawn.kind === 'judged'
      ? spawn.origins.filter(({ verdict }) => verdict === 'loses-more').map(({ origin }) => origin)
      : [];
  const others = batches.filter(({ spawnLot }) => !badSpawnLots.includes(spawnLot));
  const spawnMaker = new Map(Object.entries(makers.spawn));
  const materialSource = new Map(Object.entries(makers.material));
  return {
    badSpawnLots,
    answers: {
      materialLots: await judgeOrigins(others, materialLots, fitModel),
      spawnMakers: await judgeOrigins(batches, spawnMakers(spawnMaker), fitModel),
      materialSources: await judgeOrigins(others, materialSources(materialSource), fitModel),
    },
  };
}
