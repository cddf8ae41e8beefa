import { asCalendarDate } from '../fields/stored-date';
import type { PreparedWeighing } from './prepare-weighing';
import type { WeighedBatch } from './weighed-batches';

/** The one batch of a weighing after it, as far as the next one needs it. */
export function afterWeighing(batch: WeighedBatch, { row, lines }: PreparedWeighing): WeighedBatch {
  const on = asCalendarDate(row.weighedOn);
  return {
    ...batch,
    earlierGrams: batch.earlierGrams + row.freshGrams,
    earlier: [...batch.earlier, { on, flush: lines[0]?.flush ?? 1 }],
  };
}
