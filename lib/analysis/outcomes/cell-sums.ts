/**
 * What a site's batches of one method add up to as they count today: all batches; of those that count for contamination,
 * yield, cropped and log life how many, their units and amounts. As columns come from the database; those from `openUnits`
 * on are of logs only.
 */
export const cellColumns = [
  'batches',
  'contaminationBatches',
  'contaminationUnits',
  'contaminated',
  'contaminatedLater',
  'lostClean',
  'yieldBatches',
  'yieldUnits',
  'fresh',
  'yieldOver',
  'freshLater',
  'croppedBatches',
  'croppedUnits',
  'croppedOver',
  'croppedLater',
  'openUnits',
  'openUnitDays',
  'croppedOpenUnits',
  'croppedOpenUnitDays',
  'lifeBatches',
  'lifeUnits',
  'lifeFresh',
  'lifeDry',
] as const;

export type CellSums = Record<(typeof cellColumns)[number], number>;

export function noCell(): CellSums {
  // Spelled out: thousands are begun at a time, and spreading takes several times as long.
  return {
    batches: 0,
    contaminationBatches: 0,
    contaminationUnits: 0,
    contaminated: 0,
    contaminatedLater: 0,
    lostClean: 0,
    yieldBatches: 0,
    yieldUnits: 0,
    fresh: 0,
    yieldOver: 0,
    freshLater: 0,
    croppedBatches: 0,
    croppedUnits: 0,
    croppedOver: 0,
    croppedLater: 0,
    openUnits: 0,
    openUnitDays: 0,
    croppedOpenUnits: 0,
    croppedOpenUnitDays: 0,
    lifeBatches: 0,
    lifeUnits: 0,
    lifeFresh: 0,
    lifeDry: 0,
  };
}
