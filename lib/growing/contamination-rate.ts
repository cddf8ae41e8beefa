import { type Answer, answer, cannotCompute } from './answer';

/**
 * Contamination rate in percent: contaminated units / inoculated units x 100, of one batch or pooled over batches
 * (the sums, never the mean of rates: 2 of 20 and 5 of 10 pool to 7/30 = 23.33 %, their mean is 30 %).
 * The unit is a bag, bucket, tray, block, log or a whole bed, never a mass; how much of a unit is overgrown is
 * severity, not rate. No inoculated unit, or more contaminated than inoculated, is "cannot compute".
 */
export function contaminationRatePercent(contaminatedUnits: number, inoculatedUnits: number): Answer<number> {
  if (!Number.isInteger(contaminatedUnits) || contaminatedUnits < 0) {
    return cannotCompute('out-of-range', { argument: 'contaminatedUnits', given: String(contaminatedUnits) });
  }
  if (!Number.isInteger(inoculatedUnits) || inoculatedUnits < 1) {
    return cannotCompute('no-inoculated-units', { inoculatedUnits: String(inoculatedUnits) });
  }
  if (contaminatedUnits > inoculatedUnits) {
    return cannotCompute('more-than-inoculated', { contaminatedUnits, inoculatedUnits });
  }
  return answer((100 * contaminatedUnits) / inoculatedUnits);
}
