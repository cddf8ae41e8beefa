import { type Answer, answer, cannotCompute } from './answer';

/** pH of a saturated calcium hydroxide solution by temperature. Source: HJ 1147-2020, buffer table. */
export const saturatedLimePhTable: readonly { readonly celsius: number; readonly ph: number }[] = [
  { celsius: 0, ph: 13.416 },
  { celsius: 5, ph: 13.21 },
  { celsius: 10, ph: 13.011 },
  { celsius: 15, ph: 12.82 },
  { celsius: 20, ph: 12.637 },
  { celsius: 25, ph: 12.46 },
  { celsius: 30, ph: 12.292 },
  { celsius: 35, ph: 12.13 },
  { celsius: 40, ph: 11.975 },
  { celsius: 45, ph: 11.828 },
  { celsius: 50, ph: 11.697 },
];

/**
 * pH of saturated lime water at a temperature, 0-50 C, by straight lines between the rows of HJ 1147-2020:
 * 22 C gives 12.5662, 25 C 12.46. Holds only while undissolved lime lies in the bath.
 */
export function saturatedLimePh(celsius: number): Answer<number> {
  for (const [index, upper] of saturatedLimePhTable.entries()) {
    const lower = saturatedLimePhTable[index - 1];
    if (!lower || !(celsius >= lower.celsius && celsius <= upper.celsius)) continue;
    const share = (celsius - lower.celsius) / (upper.celsius - lower.celsius);
    return answer(lower.ph + share * (upper.ph - lower.ph));
  }
  return cannotCompute('outside-table', { argument: 'celsius', given: String(celsius), from: 0, to: 50 });
}

/** The curve fitted to the same table (HJ 1147-2020), 0-50 C; 20 C gives 12.6344. Kept as a cross-check. */
export function saturatedLimePhCurve(celsius: number): number {
  return (
    13.416 -
    0.0415 * celsius +
    0.0001028 * celsius ** 2 +
    0.000001055 * celsius ** 3 -
    0.0000000071 * celsius ** 4
  );
}

/** From 12.45 at 25 C with -0.033 per C (BATES56); 20 C gives 12.615. Kept as a cross-check near 25 C. */
export function saturatedLimePhFromCoefficient(celsius: number): number {
  return 12.45 - 0.033 * (celsius - 25);
}
