import { formatNumber } from './number-text';

/**
 * Minutes of work for an amount, as a number without its unit: whole from ten on, with one decimal from one on and two
 * below, so that 0.45 is not told as none. What is more than none and rounds to 0.00 is "<0.01".
 */
export function formatWorkMinutes(minutes: number, locale: string): string {
  if (minutes === 0) return formatNumber(0, locale);
  if (minutes < 0.005) return `<${formatNumber(0.01, locale, 2)}`;
  return formatNumber(minutes, locale, minutes < 0.995 ? 2 : minutes < 9.95 ? 1 : 0);
}
