import { type Answer, answer, cannotCompute } from './answer';

const millimetresPerMetre = 1000;

function areaSquareMetres(diameterMm: number): number {
  return (Math.PI / 4) * (diameterMm / millimetresPerMetre) ** 2;
}

function refuse(named: Readonly<Record<string, number>>) {
  for (const [argument, given] of Object.entries(named)) {
    if (!(given > 0 && given < Number.POSITIVE_INFINITY)) {
      return cannotCompute('log-size-missing', { argument, given: String(given) });
    }
  }
  return null;
}

/** Volume of a straight log in cubic metres from its diameter (outside the bark) and length, both millimetres. */
export function logVolumeCubicMetres(diameterMm: number, lengthMm: number): Answer<number> {
  return (
    refuse({ diameterMm, lengthMm }) ??
    answer(areaSquareMetres(diameterMm) * (lengthMm / millimetresPerMetre))
  );
}

/**
 * Volume of a tapered log in cubic metres by Smalian's formula, (A1 + A2) / 2 x length (common practice).
 * `firstEndMm`, `secondEndMm`: end diameters outside the bark, millimetres.
 */
export function taperedLogVolumeCubicMetres(
  firstEndMm: number,
  secondEndMm: number,
  lengthMm: number,
): Answer<number> {
  return (
    refuse({ firstEndMm, secondEndMm, lengthMm }) ??
    answer(
      ((areaSquareMetres(firstEndMm) + areaSquareMetres(secondEndMm)) / 2) * (lengthMm / millimetresPerMetre),
    )
  );
}
