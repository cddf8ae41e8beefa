import { bedSpecies } from './bed-species.ts';
import { hardwoodSpecies } from './hardwood-species.ts';
import { oysterSpecies } from './oyster-species.ts';
import type { SpeciesDefault } from './species-default.ts';

/**
 * The species a new network starts with. Temperatures, timing, lime tolerance and suitability are common
 * practice; the sources a timing row names report their own figures beside it. Taxon ids: FoodOn release 2025-02-18.
 */
export const speciesDefaults: readonly SpeciesDefault[] = [
  ...oysterSpecies,
  ...hardwoodSpecies,
  ...bedSpecies,
];
