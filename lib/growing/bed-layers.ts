import { type Answer, answer, cannotCompute } from './answer';
import { millimetresPerInch } from './length-units';

export type BedLayerMaterial = 'wood_chips' | 'sawdust' | 'cardboard' | 'straw' | 'spawn';

/** One layer from the ground up. Cardboard is a few sheets thick and has no volume worth stating. */
export type BedLayer = { readonly material: BedLayerMaterial; readonly thicknessMm: number | null };

/** Spawn for a bed, grams per square metre, all layers together: 2.5 kg to 50 ft2 on a trade page, 0.54 kg/m2. */
export const bedSpawnGramsPerSquareMetre = 540;

/** Loose bulk density of sawdust or grain spawn, grams per litre. Common practice. */
export const spawnBulkGramsPerLitre = 500;

/**
 * The usual bed (common practice): 1 in of chips, sawdust or a few sheets of clean cardboard; spawn; 2 in of chips;
 * spawn again; straw or 1 in of chips as cover. Straw lies 2 in deep, loose.
 */
export function usualBedLayers(
  bottom: 'wood_chips' | 'sawdust' | 'cardboard' = 'wood_chips',
  cover: 'straw' | 'wood_chips' = 'straw',
): readonly BedLayer[] {
  return [
    { material: bottom, thicknessMm: bottom === 'cardboard' ? null : millimetresPerInch },
    { material: 'spawn', thicknessMm: null },
    { material: 'wood_chips', thicknessMm: 2 * millimetresPerInch },
    { material: 'spawn', thicknessMm: null },
    { material: cover, thicknessMm: (cover === 'straw' ? 2 : 1) * millimetresPerInch },
  ];
}

export type BedLayerAmount = {
  readonly material: BedLayerMaterial;
  /** Litres of loose material; null for cardboard. */
  readonly litres: number | null;
  /** Grams, for spawn only. */
  readonly grams: number | null;
};

/**
 * Loose volume of each layer of a bed from its area in square metres, ground up; one millimetre on one square metre
 * is one litre. Spawn is shared out equally between its layers. 1 m2: 25.4 L bottom chips, 270 g spawn, 50.8 L chips,
 * 270 g spawn, 50.8 L straw.
 */
export function bedLayerAmounts(
  squareMetres: number,
  layers: readonly BedLayer[] = usualBedLayers(),
  spawnGramsPerSquareMetre: number = bedSpawnGramsPerSquareMetre,
): Answer<readonly BedLayerAmount[]> {
  if (!(squareMetres > 0 && squareMetres < Number.POSITIVE_INFINITY)) {
    return cannotCompute('area-missing', { squareMetres: String(squareMetres) });
  }
  const spawnLayers = layers.filter((layer) => layer.material === 'spawn').length;
  return answer(
    layers.map(({ material, thicknessMm }) => {
      if (material !== 'spawn') {
        return { material, litres: thicknessMm === null ? null : thicknessMm * squareMetres, grams: null };
      }
      const grams = (spawnGramsPerSquareMetre * squareMetres) / spawnLayers;
      return { material, litres: grams / spawnBulkGramsPerLitre, grams };
    }),
  );
}
