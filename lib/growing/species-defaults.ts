import { bedSpecies } from './bed-species';
import { hardwoodSpecies } from './hardwood-species';
import { oysterSpecies } from './oyster-species';
import type { SpeciesDefault } from './species-default';

/**
 * The species a new network starts with. Temperatures, timing, lime tolerance and suitability are common
 * practice; the sources a timing row names report their own figures beside it. Taxon ids: FoodOn release 2025-02-18.
 */
export const speciesDefaults: readonly SpeciesDefault[] = [
  ...oysterSpecies,
  ...hardwoodSpecies,
  ...bedSpecies,
];
