import type { ContainerKind } from '@/lib/growing/vocabulary';

export type StoryCrop = {
  readonly speciesCode: string;
  readonly container: ContainerKind;
  readonly materialCode: string;
  /** Share of a site's bag-like batches. */
  readonly weight: number;
  readonly unitsFrom: number;
  readonly unitsTo: number;
  /** Filled wet mass of one unit, grams. */
  readonly wetGrams: number;
  readonly moisturePercent: number;
  /** Median BE of a clean unit, percent. */
  readonly bePercent: number;
  readonly firstHarvestDays: number;
  readonly flushDays: number;
  readonly flushes: number;
};

/** Crops in bags and the like. BE medians lie within the published ranges of oysters on straw (37-126 %). */
export const bagCrops: readonly StoryCrop[] = [
  {
    speciesCode: 'pleurotus_ostreatus',
    container: 'bag',
    materialCode: 'wheat_straw',
    weight: 46,
    unitsFrom: 12,
    unitsTo: 30,
    wetGrams: 2500,
    moisturePercent: 70,
    bePercent: 72,
    firstHarvestDays: 32,
    flushDays: 12,
    flushes: 3,
  },
  {
    speciesCode: 'pleurotus_ostreatus',
    container: 'bucket',
    materialCode: 'coffee_grounds',
    weight: 12,
    unitsFrom: 6,
    unitsTo: 16,
    wetGrams: 4000,
    moisturePercent: 65,
    bePercent: 61,
    firstHarvestDays: 34,
    flushDays: 13,
    flushes: 2,
  },
  {
    speciesCode: 'pleurotus_pulmonarius',
    container: 'bag',
    materialCode: 'corn_stalks',
    weight: 12,
    unitsFrom: 10,
    unitsTo: 24,
    wetGrams: 2500,
    moisturePercent: 70,
    bePercent: 58,
    firstHarvestDays: 30,
    flushDays: 11,
    flushes: 3,
  },
  {
    speciesCode: 'pleurotus_citrinopileatus',
    container: 'bag',
    materialCode: 'wheat_straw',
    weight: 8,
    unitsFrom: 8,
    unitsTo: 20,
    wetGrams: 2000,
    moisturePercent: 71,
    bePercent: 48,
    firstHarvestDays: 31,
    flushDays: 12,
    flushes: 2,
  },
  {
    speciesCode: 'pleurotus_djamor',
    container: 'bag',
    materialCode: 'corn_cobs',
    weight: 6,
    unitsFrom: 8,
    unitsTo: 18,
    wetGrams: 2000,
    moisturePercent: 68,
    bePercent: 55,
    firstHarvestDays: 24,
    flushDays: 10,
    flushes: 3,
  },
  {
    speciesCode: 'pleurotus_eryngii',
    container: 'block',
    materialCode: 'hardwood_sawdust',
    weight: 5,
    unitsFrom: 8,
    unitsTo: 20,
    wetGrams: 2200,
    moisturePercent: 61,
    bePercent: 45,
    firstHarvestDays: 48,
    flushDays: 16,
    flushes: 2,
  },
  {
    speciesCode: 'hericium_erinaceus',
    container: 'block',
    materialCode: 'hardwood_sawdust',
    weight: 5,
    unitsFrom: 8,
    unitsTo: 16,
    wetGrams: 2200,
    moisturePercent: 61,
    bePercent: 60,
    firstHarvestDays: 40,
    flushDays: 18,
    flushes: 2,
  },
];

/** Shares of the fresh mass by flush, first flush first. */
export const flushShares = [0.52, 0.31, 0.17] as const;

export const bedCrop = {
  speciesCode: 'stropharia_rugosoannulata',
  materialCode: 'hardwood_chips',
  gramsPerM2: 1800,
} as const;
export const logCrop = {
  speciesCode: 'lentinula_edodes',
  materialCode: 'hardwood_log',
  gramsPerLogYear: 260,
} as const;
