import type { MaterialSuitability } from './species-default';
import { materialRow } from './suitability-row';

/** Paddy straw mushroom. */
export const paddyStrawMaterials: readonly MaterialSuitability[] = [
  materialRow('straw', 'suits', 'Rice straw is the usual bed.', 'La paja de arroz es la cama habitual.'),
  materialRow(
    'husk',
    'possible',
    'Cotton and other husks, composted a little first.',
    'Cascarilla de algodón y otras, algo compostadas antes.',
  ),
  materialRow('log_wood', 'unsuited', 'Grows on straw, not on wood.', 'Crece en paja, no en madera.'),
  materialRow('wood_chips', 'unsuited', 'Grows on straw, not on wood.', 'Crece en paja, no en madera.'),
  materialRow('sawdust', 'unsuited', 'Grows on straw, not on wood.', 'Crece en paja, no en madera.'),
];
