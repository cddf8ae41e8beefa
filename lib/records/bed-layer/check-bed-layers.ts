import type { FieldError } from '@/lib/base/result';
import type { BedLayerInput } from './bed-layer.input';

/** Common practice with a wide margin: no layer of a mushroom bed is thicker. */
const mostThicknessMm = 1_000;

/** What no layer of a bed can be. */
export function checkBedLayers(layers: readonly BedLayerInput[]): FieldError[] {
  return layers.flatMap(({ thickness }, row): FieldError[] =>
    thickness !== null && thickness > mostThicknessMm
      ? [{ field: `layers.${row}.thickness`, code: 'too-large', values: { max: '1 m' } }]
      : [],
  );
}
