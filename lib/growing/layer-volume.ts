/** Loose volume of a layer in litres: one millimetre on one square metre is one litre. 25 mm on 2 m2: 50 L. */
export function layerLitres(thicknessMm: number, areaCm2: number): number {
  return (thicknessMm * areaCm2) / 10_000;
}
