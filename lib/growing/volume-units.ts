/** Litres in one US liquid gallon, exact: 231 cubic inches of 16.387064 mL. */
export const litresPerUsGallon = 3.785411784;

/** Litres in one US customary cup, exact: 1/16 gallon. */
export const litresPerUsCup = litresPerUsGallon / 16;

/** Litres in one cubic metre. */
export const litresPerCubicMetre = 1000;

/** US liquid gallons to litres. */
export function usGallonsToLitres(gallons: number): number {
  return gallons * litresPerUsGallon;
}

/** Litres to US liquid gallons. */
export function litresToUsGallons(litres: number): number {
  return litres / litresPerUsGallon;
}

/** Litres to millilitres. */
export function litresToMillilitres(litres: number): number {
  return litres * 1000;
}

/** Millilitres to litres. */
export function millilitresToLitres(millilitres: number): number {
  return millilitres / 1000;
}
