import type { MaterialSuitability } from './species-default';
import { materialRow, spentSubstrateRow } from './suitability-row';

/** Shiitake, lion's mane, maitake, nameko: mushrooms of hardwood. */
export const hardwoodMaterials: readonly MaterialSuitability[] = [
  materialRow(
    'log_wood',
    'suits',
    'Hardwood logs such as oak, maple and ironwood.',
    'Troncos de madera dura como roble, arce y palo fierro.',
  ),
  materialRow('sawdust', 'suits', 'Hardwood sawdust suits it.', 'El aserrín de madera dura le va bien.'),
  materialRow(
    'wood_chips',
    'possible',
    'Hardwood chips in a mix with sawdust.',
    'Astilla de madera dura mezclada con aserrín.',
  ),
  materialRow(
    'straw',
    'unsuited',
    'A mushroom of hardwood: straw is overgrown before it settles.',
    'Es un hongo de madera dura: la paja se contamina antes de colonizarse.',
  ),
  materialRow(
    'corn_residue',
    'unsuited',
    'A mushroom of hardwood: use corn residues only as a small part of a wood mix.',
    'Es un hongo de madera dura: use rastrojo de maíz solo como parte menor de una mezcla con madera.',
  ),
  materialRow(
    'coffee_grounds',
    'unsuited',
    'A mushroom of hardwood: coffee grounds mould before it settles.',
    'Es un hongo de madera dura: el poso de café se enmohece antes.',
  ),
  materialRow(
    'husk',
    'possible',
    'Only as a part of a hardwood sawdust mix.',
    'Solo como parte de una mezcla con aserrín de madera dura.',
  ),
  materialRow(
    'cardboard',
    'unsuited',
    'A mushroom of hardwood: cardboard feeds it too little.',
    'Es un hongo de madera dura: el cartón la alimenta demasiado poco.',
  ),
  spentSubstrateRow,
];
