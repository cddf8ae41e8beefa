import { type Answer, answer, cannotCompute } from './answer';

/** Grams per mole of calcium hydroxide. */
export const limeMolarMass = 74.093;

/*
 * Grams of calcium hydroxide that dissolve in a litre of water. Source: Chinese chemistry handbook series, printed in
 * g per 100 g water and multiplied by ten. Its row for 50 C (0.138) breaks the falling trend and is left out.
 */
const solubilityTable = [
  { celsius: 0, gramsPerLitre: 1.85 },
  { celsius: 10, gramsPerLitre: 1.76 },
  { celsius: 20, gramsPerLitre: 1.65 },
  { celsius: 30, gramsPerLitre: 1.53 },
  { celsius: 40, gramsPerLitre: 1.41 },
  { celsius: 60, gramsPerLitre: 1.16 },
  { celsius: 70, gramsPerLitre: 1.06 },
] as const;

/**
 * Solubility of calcium hydroxide in grams per litre at 0-70 C, by straight lines between table rows; 25 C gives
 * 1.59 (BATES56 has 1.50 there: 0.0203 mol/L). It falls as the water warms.
 */
export function limeSolubility(celsius: number): Answer<number> {
  for (const [index, upper] of solubilityTable.entries()) {
    const lower = solubilityTable[index - 1];
    if (!lower || !(celsius >= lower.celsius && celsius <= upper.celsius)) continue;
    const share = (celsius - lower.celsius) / (upper.celsius - lower.celsius);
    return answer(lower.gramsPerLitre + share * (upper.gramsPerLitre - lower.gramsPerLitre));
  }
  return cannotCompute('outside-table', { argument: 'celsius', given: String(celsius), from: 0, to: 70 });
}
