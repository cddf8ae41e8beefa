import { wilsonInterval } from '@/lib/stats/proportion/wilson-interval';
import { shownLevel } from '../shown-figure';

/** 95 % interval, in percent, of the contaminated share of one batch's units: Wilson, the units taken as alike. */
export function contaminationInterval(
  contaminated: number,
  inoculated: number,
): { readonly low: number; readonly high: number } | null {
  const interval = wilsonInterval(contaminated, inoculated, shownLevel);
  return interval.kind === 'interval' ? { low: 100 * interval.low, high: 100 * interval.high } : null;
}
