import type { MaterialSuitability, MethodSuitability } from './species-default';
import { materialRow, methodRow, noLimeRow } from './suitability-row';

/** Almond agaricus: needs composted material. */
export const compostMaterials: readonly MaterialSuitability[] = [
  materialRow('straw', 'possible', 'Straw must be composted first.', 'La paja debe compostarse antes.'),
  materialRow(
    'spent_substrate',
    'suits',
    'Spent oyster substrate mixed with compost feeds it.',
    'El sustrato agotado de seta ostra mezclado con composta la alimenta.',
  ),
  materialRow(
    'wood_chips',
    'possible',
    'Composted chips in part of the mix.',
    'Astilla compostada en parte de la mezcla.',
  ),
  materialRow(
    'corn_residue',
    'possible',
    'Composted cobs in part of the mix.',
    'Olote compostado en parte de la mezcla.',
  ),
  materialRow('log_wood', 'unsuited', 'Grows on compost, not on wood.', 'Crece en composta, no en madera.'),
  materialRow(
    'cardboard',
    'unsuited',
    'Grows on compost, cardboard feeds it too little.',
    'Crece en composta, el cartón la alimenta poco.',
  ),
];

/** Species grown on composted or piled straw. */
export const compostMethods: readonly MethodSuitability[] = [
  methodRow('steam', 'suits', 'Steam finishes the compost.', 'El vapor termina la composta.'),
  methodRow('hot_water_bath', 'possible', 'For straw that was not composted.', 'Para paja no compostada.'),
  methodRow(
    'cold_ferment',
    'possible',
    'For straw beds in warm weather.',
    'Para camas de paja en clima cálido.',
  ),
  noLimeRow,
  methodRow(
    'untreated',
    'possible',
    'Only with well-finished compost or clean fresh straw.',
    'Solo con composta bien terminada o paja fresca y limpia.',
  ),
];
