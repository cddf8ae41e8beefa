/** How a printed BE stands to one worked out from the masses printed beside it. */
export type PrintedBeVerdict = 'agrees' | 'truncated' | 'differs' | 'unreadable';

/** Far above the noise of binary fractions (15 digits), far below any digit a paper prints. */
const noise = 1e-9;

/**
 * Compares a BE as printed in a table with the BE that its masses give, both in percent.
 *
 * `printed` is an unsigned number with '.' or ',' as its decimal sign, a percent sign allowed behind it; a comma never
 * groups thousands here. Its last digit says how finely it was printed: "88.8" to 0.1, "52" to 1. `bePercent` is not
 * rounded beforehand.
 *
 * - `agrees`: at most half a unit of the last printed digit apart, so an exact half may have gone either way.
 * - `truncated`: the digits behind were cut off instead of rounded. 4.966 printed as 4.96 (ARGAW23, flush 3).
 * - `differs`: anything else. 39.97 printed as 39.40 (SIF23, rice straw). A `bePercent` that is not finite differs too.
 * - `unreadable`: `printed` is not such a number; an empty cell is for the caller to leave out.
 */
export function comparePrintedBe(printed: string, bePercent: number): PrintedBeVerdict {
  const [, whole, fraction = ''] = /^(\d+)(?:[.,](\d+))?\s*%?$/.exec(printed.trim()) ?? [];
  if (whole === undefined) return 'unreadable';
  const lastDigit = 10 ** -fraction.length;
  const above = bePercent - Number(`${whole}.${fraction || '0'}`);
  if (Math.abs(above) <= lastDigit / 2 + noise) return 'agrees';
  return above > 0 && above < lastDigit - noise ? 'truncated' : 'differs';
}
