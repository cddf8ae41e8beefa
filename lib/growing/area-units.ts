/** Square metres in one square foot, exact: 0.3048 squared. */
export const squareMetresPerSquareFoot = 0.09290304;

/** Square feet to square metres. */
export function squareFeetToSquareMetres(squareFeet: number): number {
  return squareFeet * squareMetresPerSquareFoot;
}

/** Square metres to square feet. */
export function squareMetresToSquareFeet(squareMetres: number): number {
  return squareMetres / squareMetresPerSquareFoot;
}
