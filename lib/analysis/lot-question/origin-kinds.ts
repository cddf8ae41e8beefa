import { contaminationRandom } from '../adjusted/contamination-request';
import { isLotKnown, isMaterialKnown } from '../adjusted/model-batch';
import type { OriginKind } from './judged-origin';

/** Fewer lots than this say too little about how much lots differ anyway. Our choice. */
const fewestLotsCompared = 4;
/** Batches of one lot fail together, so that two lots of a maker promise too much. The rule of all figures here. */
const fewestLotsOfMaker = 3;

const withMaterial = [...contaminationRandom, 'material lot'] as const;

export const spawnLots: OriginKind = {
  originOf: (batch) => (isLotKnown(batch) ? batch.spawnLot : undefined),
  lotOf: ({ spawnLot }) => spawnLot,
  random: contaminationRandom,
  shared: 'spawn lot',
  crossed: [],
  fewestOrigins: fewestLotsCompared,
  fewestLots: 1,
};

export const materialLots: OriginKind = {
  originOf: (batch) => (isMaterialKnown(batch) ? batch.materialLot : undefined),
  lotOf: ({ materialLot }) => materialLot,
  random: withMaterial,
  shared: 'material lot',
  crossed: ['spawn lot'],
  fewestOrigins: fewestLotsCompared,
  fewestLots: 1,
};

/** The makers of spawn; `makerOf` by the id of a lot. No maker is expected to differ: their lots do. */
export const spawnMakers = (makerOf: ReadonlyMap<string, string>): OriginKind => ({
  originOf: ({ spawnLot }) => makerOf.get(spawnLot),
  lotOf: ({ spawnLot }) => spawnLot,
  random: contaminationRandom,
  shared: undefined,
  crossed: ['spawn lot'],
  fewestOrigins: 2,
  fewestLots: fewestLotsOfMaker,
});

/** Where material came from, the same way; `sourceOf` by the id of a lot. */
export const materialSources = (sourceOf: ReadonlyMap<string, string>): OriginKind => ({
  originOf: ({ materialLot }) => sourceOf.get(materialLot),
  lotOf: ({ materialLot }) => materialLot,
  random: withMaterial,
  shared: undefined,
  crossed: ['spawn lot', 'material lot'],
  fewestOrigins: 2,
  fewestLots: fewestLotsOfMaker,
});
