import type { ModelBatch } from '../adjusted/model-batch';
import type { Fit } from '../fitting/fit';
import { judgeOrigins } from './judge-origins';
import type { OriginsAnswer } from './judged-origin';
import { materialLots, materialSources, spawnMakers } from './origin-kinds';

/** Makers of spawn and sources of material by the id of a lot, as the records name them. */
export type LotMakers = {
  readonly spawn: Readonly<Record<string, string>>;
  readonly material: Readonly<Record<string, string>>;
};

export const originQuestions = ['materialLots', 'spawnMakers', 'materialSources'] as const;
export type OriginQuestion = (typeof originQuestions)[number];
export type AllOrigins = Readonly<Record<OriginQuestion, OriginsAnswer>>;

/** Material lots, makers of spawn and sources of material, each against what its sites and methods would lose anyway. */
export async function answerOrigins(
  batches: readonly ModelBatch[],
  makers: LotMakers,
  fitModel: Fit,
): Promise<AllOrigins> {
  const spawnMaker = new Map(Object.entries(makers.spawn));
  const materialSource = new Map(Object.entries(makers.material));
  return {
    materialLots: await judgeOrigins(batches, materialLots, fitModel),
    spawnMakers: await judgeOrigins(batches, spawnMakers(spawnMaker), fitModel),
    materialSources: await judgeOrigins(batches, materialSources(materialSource), fitModel),
  };
}
