/** Rounded up, but not past a whole number that rounding of the formula overshot by a hair. */
export function wholeNumber(value: number): number {
  return Math.ceil(value - 1e-9);
}
