import { addTo, cellAt } from './cell-sums';

/** How often a near batch counts: 1, 0, or -1 to take it off what the kept sums hold. */
export type NearCounted = { contamination: number; yield: number; cropped: number; life: number };

/**
 * Adds what a near batch comes to, to the numbers of its site from `cell` on; its amounts, in the order of near batches with
 * units first, begin at `start`.
 */
export function addAmounts(
  numbers: number[],
  cell: number,
  inside: number,
  { contamination: c, yield: y, cropped: k, life: l }: NearCounted,
  amounts: readonly number[],
  start: number,
): void {
  const units = amounts[start] ?? 0;
  addTo(numbers, cell + cellAt.batches, inside);
  if (c !== 0) {
    addTo(numbers, cell + cellAt.contaminationBatches, c);
    addTo(numbers, cell + cellAt.contaminationUnits, c * units);
    addTo(numbers, cell + cellAt.contaminated, c * (amounts[start + 1] ?? 0));
    addTo(numbers, cell + cellAt.contaminatedLater, c * (amounts[start + 2] ?? 0));
    addTo(numbers, cell + cellAt.lostClean, c * (amounts[start + 3] ?? 0));
  }
  const over = amounts[start + 5] ?? 0;
  const later = amounts[start + 6] ?? 0;
  const open = amounts[start + 7] ?? 0;
  const openDays = amounts[start + 8] ?? 0;
  if (y !== 0) {
    addTo(numbers, cell + cellAt.yieldBatches, y);
    addTo(numbers, cell + cellAt.yieldUnits, y * units);
    addTo(numbers, cell + cellAt.fresh, y * (amounts[start + 4] ?? 0));
    addTo(numbers, cell + cellAt.yieldOver, y * over);
    addTo(numbers, cell + cellAt.freshLater, y * later);
    addTo(numbers, cell + cellAt.openUnits, y * open);
    addTo(numbers, cell + cellAt.openUnitDays, y * openDays);
  }
  if (k !== 0) {
    addTo(numbers, cell + cellAt.croppedBatches, k);
    addTo(numbers, cell + cellAt.croppedUnits, k * units);
    addTo(numbers, cell + cellAt.croppedOver, k * over);
    addTo(numbers, cell + cellAt.croppedLater, k * later);
    addTo(numbers, cell + cellAt.croppedOpenUnits, k * open);
    addTo(numbers, cell + cellAt.croppedOpenUnitDays, k * openDays);
  }
  if (l !== 0) {
    addTo(numbers, cell + cellAt.lifeBatches, l);
    addTo(numbers, cell + cellAt.lifeUnits, l * units);
    addTo(numbers, cell + cellAt.lifeFresh, l * (amounts[start + 9] ?? 0));
    addTo(numbers, cell + cellAt.lifeDry, l * (amounts[start + 10] ?? 0));
  }
}
