import { formatNumber } from './number-text';

/** A percentage (0-100, a biological efficiency may be more) with its sign, kept on one line: "12.4 %". */
export function formatPercent(percent: number, locale: string, digits = 1): string {
  return `${formatNumber(percent, locale, digits)}\u00a0%`;
}
