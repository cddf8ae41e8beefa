import { formatNumber } from './number-text';

/**
 * Two limits in the reader's writing: "8.1–18.3". When one is below zero a dash could be read as a minus, so they
 * are written "−2.1 … 3.0".
 */
export function formatInterval(low: number, high: number, locale: string, digits = 1): string {
  const lowText = formatNumber(low, locale, digits);
  const highText = formatNumber(high, locale, digits);
  return low < 0 || high < 0 ? `${lowText}\u00a0…\u00a0${highText}` : `${lowText}–${highText}`;
}
