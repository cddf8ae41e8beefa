import type { ModelBatch } from '../adjusted/model-batch';
import type { Fit } from '../fitting/fit';
import { judgeOrigins } from './judge-origins';
import type { OriginsAnswer } from './judged-origin';
import { type LotsOfMaker, lotsApart } from './lots-apart';
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
  /** Lots called out that a maker or a source is judged without. */
  readonly apart: Readonly<Record<Exclude<OriginQuestion, 'materialLots'>, LotsOfMaker>>;
};

/**
 * Material lots, makers of spawn and sources of material, each against what its sites and methods would lose anyway. A lot of
 * spawn often goes onto one load of straw; where the spawn is called out, the straw is judged by its other batches. One bad
 * lot does not make a bad maker or source either: each is judged by its other lots (`lotsApart`).
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
  const others = without(batches, 'spawnLot', badSpawnLots);
  const spawnMaker = new Map(Object.entries(makers.spawn));
  const materialSource = new Map(Object.entries(makers.material));
  const material = await judgeOrigins(others, materialLots, fitModel);
  const apart = {
    spawnMakers: lotsApart(spawn, spawnMaker),
    materialSources: lotsApart(material, materialSource),
  };
  const ofMakers = without(batches, 'spawnLot', Object.values(apart.spawnMakers).flat());
  const ofSources = without(others, 'materialLot', Object.values(apart.materialSources).flat());
  return {
    ...{ badSpawnLots, apart },
    answers: {
      materialLots: material,
      spawnMakers: await judgeOrigins(ofMakers, spawnMakers(spawnMaker), fitModel),
      materialSources: await judgeOrigins(ofSources, materialSources(materialSource), fitModel),
    },
  };
}

function without(
  batches: readonly ModelBatch[],
  lot: 'spawnLot' | 'materialLot',
  left: readonly string[],
): readonly ModelBatch[] {
  const out = new Set(left);
  return batches.filter((batch) => !out.has(batch[lot]));
}
