/** Species of the forty spawn lots, in the order in which they were made over three seasons. */
export const spawnLotPlan: readonly {
  readonly speciesCode: string;
  readonly name: string;
  readonly count: number;
}[] = [
  { speciesCode: 'pleurotus_ostreatus', name: 'PEARL', count: 14 },
  { speciesCode: 'pleurotus_pulmonarius', name: 'PHOEN', count: 6 },
  { speciesCode: 'pleurotus_citrinopileatus', name: 'GOLD', count: 5 },
  { speciesCode: 'pleurotus_djamor', name: 'PINK', count: 4 },
  { speciesCode: 'pleurotus_eryngii', name: 'KING', count: 3 },
  { speciesCode: 'hericium_erinaceus', name: 'LION', count: 3 },
  { speciesCode: 'stropharia_rugosoannulata', name: 'WINE', count: 2 },
  { speciesCode: 'lentinula_edodes', name: 'SHII', count: 2 },
  { speciesCode: 'agaricus_subrufescens', name: 'ALMO', count: 1 },
];

export const spawnMakers = ['Larkmoor spawn room', 'Hollin Vale Spawn', 'Saddle Creek Cultures'] as const;

/** Code of a lot: S-PEARL-07 is the seventh pearl oyster lot. */
export function spawnLotCode(name: string, number: number): string {
  return `S-${name}-${String(number).padStart(2, '0')}`;
}
