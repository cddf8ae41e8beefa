import type { MaterialSuitability, MethodSuitability } from './species-default';
import { materialRow, methodRow, spentSubstrateRow } from './suitability-row';

/** Oysters and elm oyster. */
export const oysterMaterials: readonly MaterialSuitability[] = [
  materialRow(
    'straw',
    'suits',
    'Straw is the usual oyster substrate.',
    'La paja es el sustrato habitual de las setas ostra.',
  ),
  materialRow(
    'corn_residue',
    'suits',
    'Oysters grow on stalks, husks and crushed cobs.',
    'Las setas ostra crecen en caña, hoja y olote triturado.',
  ),
  materialRow(
    'coffee_grounds',
    'suits',
    'Use grounds within a day of brewing; they mould quickly.',
    'Use el poso dentro del día de preparado; se enmohece rápido.',
  ),
  materialRow(
    'husk',
    'suits',
    'Husks and hulls carry oysters well, best mixed with straw.',
    'Las cascarillas sirven bien, mejor mezcladas con paja.',
  ),
  materialRow(
    'sawdust',
    'suits',
    'Hardwood sawdust suits oysters.',
    'El aserrín de madera dura va bien con las setas ostra.',
  ),
  materialRow(
    'cardboard',
    'possible',
    'Clean cardboard works, with a small crop.',
    'El cartón limpio funciona, con poca cosecha.',
  ),
  materialRow(
    'wood_chips',
    'possible',
    'Chips are slow for oysters; mix with straw or sawdust.',
    'La astilla es lenta para setas ostra; mezcle con paja o aserrín.',
  ),
  materialRow(
    'log_wood',
    'suits',
    'Soft hardwoods such as poplar, willow and maple suit oysters.',
    'Maderas como álamo, sauce y arce van bien con las setas ostra.',
  ),
  spentSubstrateRow,
];

/** Fast colonisers that bear lime. */
export const oysterMethods: readonly MethodSuitability[] = [
  methodRow(
    'hot_water_bath',
    'suits',
    'The usual treatment for oyster straw.',
    'El tratamiento habitual de la paja para setas ostra.',
  ),
  methodRow(
    'cold_lime_soak',
    'suits',
    'Oysters bear the high pH and competitors do not.',
    'Las setas ostra soportan el pH alto y los competidores no.',
  ),
  methodRow(
    'cold_ferment',
    'suits',
    'Oysters settle quickly in drained fermented straw.',
    'Las setas ostra se establecen rápido en paja fermentada y escurrida.',
  ),
  methodRow(
    'steam',
    'suits',
    'Steamed straw or sawdust suits oysters.',
    'La paja o el aserrín al vapor va bien con las setas ostra.',
  ),
  methodRow(
    'untreated',
    'possible',
    'Only with fresh clean material and much spawn; expect more contamination.',
    'Solo con material fresco y limpio y mucha semilla; espere más contaminación.',
  ),
];
