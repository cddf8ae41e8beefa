import type { MaterialSuitability, MethodSuitability } from './species-default';
import { materialRow, methodRow, noLimeRow, spentSubstrateRow } from './suitability-row';

/** Wine cap. */
export const wineCapMaterials: readonly MaterialSuitability[] = [
  materialRow(
    'wood_chips',
    'suits',
    'Fresh hardwood chips are the usual bed.',
    'La astilla fresca de madera dura es la cama habitual.',
  ),
  materialRow(
    'straw',
    'suits',
    'Straw beds fruit sooner and are used up sooner.',
    'Las camas de paja fructifican antes y se agotan antes.',
  ),
  materialRow(
    'sawdust',
    'possible',
    'Mix with chips so that the bed keeps air.',
    'Mezcle con astilla para que la cama tenga aire.',
  ),
  materialRow(
    'corn_residue',
    'possible',
    'Chopped stalks in a mix with chips or straw.',
    'Caña picada mezclada con astilla o paja.',
  ),
  materialRow(
    'cardboard',
    'possible',
    'As a bottom layer under the chips.',
    'Como capa inferior bajo la astilla.',
  ),
  materialRow(
    'log_wood',
    'unsuited',
    'Wine cap grows in beds on the ground, not on logs.',
    'La estrofaria crece en camas sobre el suelo, no en troncos.',
  ),
  materialRow(
    'coffee_grounds',
    'unsuited',
    'Grounds mould before wine cap settles.',
    'El poso se enmohece antes de que la estrofaria se establezca.',
  ),
  spentSubstrateRow,
];

/** Bed species on chips or straw outdoors. */
export const bedMethods: readonly MethodSuitability[] = [
  methodRow(
    'untreated',
    'suits',
    'Fresh chips or straw need no treatment for an outdoor bed.',
    'La astilla o paja fresca no necesita tratamiento para una cama al aire libre.',
  ),
  methodRow(
    'cold_ferment',
    'suits',
    'Fermented and drained material makes a good bed.',
    'El material fermentado y escurrido hace una buena cama.',
  ),
  methodRow(
    'hot_water_bath',
    'possible',
    'Works, more work than a bed needs.',
    'Funciona, con más trabajo del que una cama necesita.',
  ),
  methodRow(
    'steam',
    'possible',
    'Works, more work than a bed needs.',
    'Funciona, con más trabajo del que una cama necesita.',
  ),
  noLimeRow,
];
