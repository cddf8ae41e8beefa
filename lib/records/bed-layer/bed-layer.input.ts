import { z } from 'zod';
import { bedLayerMaterials } from '@/lib/growing/vocabulary';
import { choiceField } from '../fields/choice-field';
import { dateField } from '../fields/date-field';
import { idField, optionalIdField } from '../fields/id-field';
import { optionalLengthField } from '../fields/length-field';
import { isBlank, rowsField } from '../fields/rows-field';
import { optionalVolumeField } from '../fields/volume-field';

export const mostLayers = 8;

const layerInput = z.object({
  material: choiceField(bedLayerMaterials),
  thickness: optionalLengthField(),
  volume: optionalVolumeField(),
});

/** Layers of a bed from the ground up; thickness and volume may be left out. */
export const bedLayersField = rowsField(
  layerInput,
  mostLayers,
  (row) => isBlank(row.material) && isBlank(row.thickness) && isBlank(row.volume),
);

/** Layers laid on top of a bed that is there. */
export const addBedLayersInput = z.object({
  /** Id of the lowest of them, by which a repeated post is known. */
  id: optionalIdField,
  batchId: idField,
  laidOn: dateField,
  layers: bedLayersField,
});

export type BedLayerInput = z.output<typeof layerInput>;
