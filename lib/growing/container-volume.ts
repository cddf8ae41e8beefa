import { type Answer, answer, cannotCompute } from './answer';

const cubicMillimetresPerLitre = 1_000_000;

function litres(named: Readonly<Record<string, number>>, cubicMillimetres: number): Answer<number> {
  for (const [argument, given] of Object.entries(named)) {
    if (!(given > 0 && given < Number.POSITIVE_INFINITY)) {
      return cannotCompute('out-of-range', { argument, given: String(given) });
    }
  }
  return answer(cubicMillimetres / cubicMillimetresPerLitre);
}

/** Litres of a box: tray, bed or block; millimetres. */
export function boxLitres(lengthMm: number, widthMm: number, depthMm: number): Answer<number> {
  return litres({ lengthMm, widthMm, depthMm }, lengthMm * widthMm * depthMm);
}

/** Litres of a round column: a filled bag or drum; millimetres. */
export function cylinderLitres(diameterMm: number, heightMm: number): Answer<number> {
  return litres({ diameterMm, heightMm }, (Math.PI / 4) * diameterMm ** 2 * heightMm);
}

/** Litres of a bucket, wider at the top (a truncated cone); inside measures in millimetres. */
export function bucketLitres(
  topDiameterMm: number,
  bottomDiameterMm: number,
  heightMm: number,
): Answer<number> {
  const squares = topDiameterMm ** 2 + topDiameterMm * bottomDiameterMm + bottomDiameterMm ** 2;
  return litres({ topDiameterMm, bottomDiameterMm, heightMm }, (Math.PI / 12) * heightMm * squares);
}

/** Litres of tubular bag filled to a height, from its width lying flat: the tube's diameter is 2 x width / pi. */
export function layFlatBagLitres(flatWidthMm: number, filledHeightMm: number): Answer<number> {
  return litres({ flatWidthMm, filledHeightMm }, (flatWidthMm ** 2 / Math.PI) * filledHeightMm);
}
