import type { CellSums } from './cell-sums';

/** How often a near batch counts: 1, 0, or -1 to take it off what the kept sums hold. */
export type NearCounted = { contamination: number; yield: number; cropped: number; life: number };

/** Adds what a near batch comes to; its amounts, in the order of near batches with units first, begin at `start`. */
export function addAmounts(
  cell: CellSums,
  inside: number,
  { contamination: c, yield: y, cropped: k, life: l }: NearCounted,
  amounts: readonly number[],
  start: number,
): void {
  const units = amounts[start] ?? 0;
  cell.batches += inside;
  if (c !== 0) {
    cell.contaminationBatches += c;
    cell.contaminationUnits += c * units;
    cell.contaminated += c * (amounts[start + 1] ?? 0);
    cell.contaminatedLater += c * (amounts[start + 2] ?? 0);
    cell.lostClean += c * (amounts[start + 3] ?? 0);
  }
  const over = amounts[start + 5] ?? 0;
  const later = amounts[start + 6] ?? 0;
  const open = amounts[start + 7] ?? 0;
  const openDays = amounts[start + 8] ?? 0;
  if (y !== 0) {
    cell.yieldBatches += y;
    cell.yieldUnits += y * units;
    cell.fresh += y * (amounts[start + 4] ?? 0);
    cell.yieldOver += y * over;
    cell.freshLater += y * later;
    cell.openUnits += y * open;
    cell.openUnitDays += y * openDays;
  }
  if (k !== 0) {
    cell.croppedBatches += k;
    cell.croppedUnits += k * units;
    cell.croppedOver += k * over;
    cell.croppedLater += k * later;
    cell.croppedOpenUnits += k * open;
    cell.croppedOpenUnitDays += k * openDays;
  }
  if (l !== 0) {
    cell.lifeBatches += l;
    cell.lifeUnits += l * units;
    cell.lifeFresh += l * (amounts[start + 9] ?? 0);
    cell.lifeDry += l * (amounts[start + 10] ?? 0);
  }
}
