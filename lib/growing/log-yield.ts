import { type Answer, answer, cannotCompute } from './answer';
import { refuseNegative } from './in-range';

/** Days in a year for a yearly rate, the Gregorian mean. */
const daysPerYear = 365.2425;

/**
 * Yield of logs in grams per log per year: fresh mass / inoculated logs / years since inoculation.
 * `days` runs from inoculation to the day judged (or the day closed). Under one year the figure would be blown up
 * from a part of a season, so it is "cannot compute" with the days so far.
 */
export function gramsPerLogPerYear(freshGrams: number | null, logs: number, days: number): Answer<number> {
  if (freshGrams === null) return cannotCompute('fresh-mass-missing');
  const refused = refuseNegative({ freshGrams, logs, days });
  if (refused) return refused;
  if (logs < 1) return cannotCompute('no-inoculated-units', { inoculatedUnits: logs });
  if (days < 365) return cannotCompute('less-than-a-year', { days });
  return answer(freshGrams / logs / (days / daysPerYear));
}
