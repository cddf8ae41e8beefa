import { asCalendarDate } from '../fields/stored-date';
import type { PreparedWeighing } from './prepare-weighing';
import type { EarlierHarvest, WeighedBatch } from './weighed-batches';

/**
 * The one batch of a weighing after it, as far as the next one needs it. `earlierOf` makes what is kept of the
 * weighing, or gives one that is alike.
 */
export function afterWeighing(
  batch: WeighedBatch,
  { row, lines }: PreparedWeighing,
  earlierOf = (on: string, flush: number): EarlierHarvest => ({ on, flush }),
): WeighedBatch {
  return {
    ...batch,
    earlierGrams: batch.earlierGrams + row.freshGrams,
    earlier: [...batch.earlier, earlierOf(asCalendarDate(row.weighedOn), lines[0]?.flush ?? 1)],
  };
}
