/** Grams in one international avoirdupois pound, exact by definition (1959). UCUM: 1 [lb_av] = 7000 [gr]. */
export const gramsPerPound = 453.59237;

/** Grams in one avoirdupois ounce, exact: 1/16 pound. */
export const gramsPerOunce = gramsPerPound / 16;

export const gramsPerKilogram = 1000;

/** Kilograms to grams. */
export function kilogramsToGrams(kilograms: number): number {
  return kilograms * gramsPerKilogram;
}

/** Grams to kilograms. */
export function gramsToKilograms(grams: number): number {
  return grams / gramsPerKilogram;
}

/** Avoirdupois pounds to grams. */
export function poundsToGrams(pounds: number): number {
  return pounds * gramsPerPound;
}

/** Grams to avoirdupois pounds. */
export function gramsToPounds(grams: number): number {
  return grams / gramsPerPound;
}

/** Avoirdupois ounces to grams. */
export function ouncesToGrams(ounces: number): number {
  return ounces * gramsPerOunce;
}

/** Grams to avoirdupois ounces. */
export function gramsToOunces(grams: number): number {
  return grams / gramsPerOunce;
}
