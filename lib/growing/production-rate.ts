import { type Answer, answer, cannotCompute } from './answer';
import { type CalendarDate, daysBetween } from './calendar-date';
import { refuseNegative } from './in-range';

/**
 * Production rate in percent BE per day: BE / days from inoculation to the LAST harvest (common practice in
 * Pleurotus papers). Dividing by the days to the first harvest answers another question.
 * No harvest yet, or a last harvest on the day of inoculation, is "cannot compute".
 */
export function productionRate(
  bePercent: number,
  inoculatedOn: CalendarDate,
  lastHarvestOn: CalendarDate | null,
): Answer<{ readonly percentPerDay: number; readonly days: number }> {
  if (lastHarvestOn === null) return cannotCompute('no-harvest-yet');
  const refused = refuseNegative({ bePercent });
  if (refused) return refused;
  const days = daysBetween(inoculatedOn, lastHarvestOn);
  return days < 1
    ? cannotCompute('days-not-positive', { days })
    : answer({ percentPerDay: bePercent / days, days });
}
