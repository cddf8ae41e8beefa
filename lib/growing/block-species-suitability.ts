import type { MaterialSuitability, MethodSuitability } from './species-default';
import { materialRow, methodRow, noLimeRow, spentSubstrateRow } from './suitability-row';

/** King oyster and black poplar mushroom: wood-based blocks first, straw second. */
export const blockMaterials: readonly MaterialSuitability[] = [
  materialRow(
    'sawdust',
    'suits',
    'Hardwood sawdust with some bran is the usual substrate.',
    'Aserrín de madera dura con algo de salvado es el sustrato habitual.',
  ),
  materialRow(
    'straw',
    'possible',
    'Fruits on straw, with a smaller crop.',
    'Fructifica en paja, con menos cosecha.',
  ),
  materialRow(
    'corn_residue',
    'possible',
    'Ground cobs work in a mix with sawdust.',
    'El olote molido sirve mezclado con aserrín.',
  ),
  materialRow(
    'husk',
    'possible',
    'Use husks in a mix with sawdust.',
    'Use la cascarilla mezclada con aserrín.',
  ),
  materialRow(
    'wood_chips',
    'possible',
    'Chips alone are slow; mix with sawdust.',
    'La astilla sola es lenta; mezcle con aserrín.',
  ),
  materialRow(
    'log_wood',
    'possible',
    'Logs or stumps of soft hardwood, slow.',
    'Troncos o tocones de madera blanda, lento.',
  ),
  materialRow(
    'coffee_grounds',
    'unsuited',
    'Too slow on coffee grounds: moulds arrive first.',
    'Demasiado lento en poso de café: el moho llega antes.',
  ),
  materialRow(
    'cardboard',
    'unsuited',
    'Cardboard feeds it too little.',
    'El cartón la alimenta demasiado poco.',
  ),
  spentSubstrateRow,
];

/** Slower species on blocks. */
export const blockMethods: readonly MethodSuitability[] = [
  methodRow(
    'steam',
    'suits',
    'Long steaming suits enriched blocks.',
    'El vapor prolongado va bien con bloques enriquecidos.',
  ),
  methodRow(
    'hot_water_bath',
    'possible',
    'Without bran or other supplement only.',
    'Solo sin salvado ni otro suplemento.',
  ),
  methodRow(
    'cold_ferment',
    'unsuited',
    'Too slow: competitors return before it has settled.',
    'Demasiado lenta: los competidores vuelven antes de que se establezca.',
  ),
  noLimeRow,
  methodRow(
    'untreated',
    'unsuited',
    'Too slow for untreated substrate; on logs this does not apply.',
    'Demasiado lenta para sustrato sin tratar; en troncos no se aplica.',
  ),
];
