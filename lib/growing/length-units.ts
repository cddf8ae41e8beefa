/** Millimetres in one inch, exact by definition (1959). */
export const millimetresPerInch = 25.4;

/** Millimetres in one foot, exact. */
export const millimetresPerFoot = 304.8;

/** Inches to millimetres. */
export function inchesToMillimetres(inches: number): number {
  return inches * millimetresPerInch;
}

/** Millimetres to inches. */
export function millimetresToInches(millimetres: number): number {
  return millimetres / millimetresPerInch;
}

/** Feet to millimetres. */
export function feetToMillimetres(feet: number): number {
  return feet * millimetresPerFoot;
}

/** Centimetres to millimetres. */
export function centimetresToMillimetres(centimetres: number): number {
  return centimetres * 10;
}

/** Millimetres to metres. */
export function millimetresToMetres(millimetres: number): number {
  return millimetres / 1000;
}
