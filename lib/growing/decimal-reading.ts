import { arabicDecimalSign, arabicThousandsSign } from './entry-text';

export type DecimalSign = '.' | ',';

const groupedBy: Readonly<Record<string, RegExp>> = {
  '.': /^[1-9]\d{0,2}(\.\d{3})+$/,
  ',': /^[1-9]\d{0,2}(,\d{3})+$/,
  ' ': /^[1-9]\d{0,2}( \d{3})+$/,
  [arabicThousandsSign]: new RegExp(`^[1-9]\\d{0,2}(${arabicThousandsSign}\\d{3})+$`),
};

function groupedInteger(text: string): number | null {
  if (/^\d+$/.test(text)) return Number(text);
  for (const [sign, shape] of Object.entries(groupedBy)) {
    if (shape.test(text)) return Number(text.replaceAll(sign, ''));
  }
  return null;
}

function withFraction(whole: string, fraction: string): readonly number[] {
  const integer = whole === '' ? 0 : groupedInteger(whole);
  if (integer === null || !/^\d*$/.test(fraction) || (whole === '' && fraction === '')) return [];
  // Number() on the digits keeps the decimal exactly as typed; adding a fraction to an integer would not.
  return [Number(`${integer}.${fraction || '0'}`)];
}

/**
 * What an unsigned number without unit can mean: no reading, one, or two. Both '.' and ',' may be the decimal sign.
 * One sign before exactly three digits ("1,250", "12.500") may also group thousands: then both readings are given,
 * decimal first, unless the sign is the reader's own decimal sign. "0,250", ".5", "1250.5" and "1,250.5" have one.
 */
export function decimalReadings(text: string, own: DecimalSign | null = null): readonly number[] {
  const signs = text.replace(/[\d ]/g, '');
  const last = signs.at(-1);
  if (last === undefined || last === arabicThousandsSign) {
    const integer = groupedInteger(text);
    return integer === null ? [] : [integer];
  }
  const at = text.lastIndexOf(last);
  const whole = text.slice(0, at);
  const fraction = text.slice(at + 1);
  if (last === arabicDecimalSign) return withFraction(whole, fraction);
  if (whole.includes(last)) {
    const integer = groupedInteger(text);
    return integer === null ? [] : [integer];
  }
  const decimal = withFraction(whole, fraction);
  const thousands = signs.length === 1 && last !== own ? groupedInteger(text) : null;
  return thousands === null ? decimal : [...decimal, thousands];
}
