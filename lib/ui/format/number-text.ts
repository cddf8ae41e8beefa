import { numberFormat } from '@/lib/growing/kept-formats';
/** A number in the reader's writing, always with `digits` decimals: 1234.5 is "1,234.5" in es-US and "1234,5" in es-ES. */
export function formatNumber(value: number, locale: string, digits = 0): string {
  const text = numberFormat(locale, {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
    numberingSystem: 'latn',
    signDisplay: 'negative',
  }).format(value);
  return text.replace('-', '\u2212');
}
