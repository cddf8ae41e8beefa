/** Longest entry read as a quantity; anything longer is refused before it is looked at. */
const longestEntry = 64;

/** U+066B, a decimal sign that can be nothing else. */
export const arabicDecimalSign = '\u066b';

/** U+066C, a thousands sign that can be nothing else. */
export const arabicThousandsSign = '\u066c';

const vulgarFractions: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

function asciiDigit(digit: string): string {
  const code = digit.codePointAt(0) ?? 0;
  // Unicode lays out every set of decimal digits as ten code points in order, starting at zero.
  let value = 0;
  while (value < 9 && /^\p{Nd}$/u.test(String.fromCodePoint(code - value - 1))) value += 1;
  return String(value);
}

/**
 * The text of a number field with what only looks different made equal: digits of any script, full-width signs,
 * vulgar fractions, minus signs, spaces of any width, characters that cannot be seen. Tab and line breaks (from a
 * scale that types like a keyboard) become line breaks, which never join digits. `null`: longer than any quantity.
 */
export function plainEntryText(text: string): string | null {
  if (text.length > longestEntry * 4) return null;
  const plain = text
    .replace(/[¼½¾⅓⅔⅛⅜⅝⅞]/g, (sign) => ` ${vulgarFractions[sign] ?? ''}`)
    .normalize('NFKC')
    .replace(/[\t\r\n\v\f\u2028\u2029]+/g, '\n')
    .replace(/(?!\n)[\p{Cc}\p{Cf}]/gu, '')
    .replace(/\p{Zs}+/gu, ' ')
    .replace(/\p{Nd}/gu, asciiDigit)
    .replace(/\u060c/g, ',')
    .replace(/[\u2212\u2010-\u2015]/g, '-')
    .replace(/\u2044/g, '/')
    .replace(/[\u2032\u2019]/g, "'")
    .replace(/[\u2033\u201d]/g, '"')
    .trim();
  return plain.length > longestEntry ? null : plain.toLowerCase();
}
