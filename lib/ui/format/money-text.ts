import { currencyDigits, type Money, minorText } from '@/lib/growing/money';

/** An amount as the reader writes money: "$9.50", "9,50 €". */
export function formatMoney({ minor, currency }: Money, locale: string): string {
  const format = new Intl.NumberFormat(locale, { style: 'currency', currency, numberingSystem: 'latn' });
  return format.format(minor / 10 ** currencyDigits(currency)).replace('-', '\u2212');
}

/** An amount as the reader would type it into a box, without the currency: "9.50" or "9,50". */
export function moneyFieldText({ minor, currency }: Money, locale: string): string {
  const sign = new Intl.NumberFormat(locale, { numberingSystem: 'latn' })
    .formatToParts(1.5)
    .find(({ type }) => type === 'decimal')?.value;
  return minorText(minor, currency).replace('.', sign ?? '.');
}
