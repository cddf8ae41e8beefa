import type { SpeciesDefault } from '@/lib/growing/species-default';

/** The later end of each expected range, in whole days, of the containers that the species is mostly grown in. */
export function speciesTimingColumns(species: SpeciesDefault) {
  const timing = species.timing[0];
  return {
    colonisedDays: timing?.colonisedDays?.to ?? null,
    pinsDays: timing?.pinsDays?.to ?? null,
    firstHarvestDays: timing?.firstHarvestDays.to ?? null,
    betweenFlushesDays: timing?.betweenFlushesDays?.to ?? null,
  };
}
