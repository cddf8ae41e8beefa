import { type Answer, answer, cannotCompute } from './answer';
import { refuseNegative } from './in-range';

/** Yield of a bed in kilograms per square metre (definition D7); beds are never given a BE. */
export function bedYieldKgPerSquareMetre(
  freshGrams: number | null,
  squareMetres: number | null,
): Answer<number> {
  if (freshGrams === null) return cannotCompute('fresh-mass-missing');
  if (squareMetres === null || squareMetres === 0) return cannotCompute('area-missing');
  return refuseNegative({ freshGrams, squareMetres }) ?? answer(freshGrams / 1000 / squareMetres);
}
