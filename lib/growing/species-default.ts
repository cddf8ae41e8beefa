import type { LocalText } from './local-text';
import type { SourceKey } from './sources';
import type { ContainerKind, MaterialKind, MethodKind } from './vocabulary';

/** Whole days, both ends included. */
export type DayRange = { readonly from: number; readonly to: number };

/**
 * `suits`: what growers use it for. `possible`: works with care, the reason says which.
 * `unsuited`: expect failure, the reason says why.
 */
export type SuitabilityVerdict = 'suits' | 'possible' | 'unsuited';

export type MaterialSuitability = {
  readonly material: MaterialKind;
  readonly verdict: SuitabilityVerdict;
  readonly reason: LocalText;
};

export type MethodSuitability = {
  readonly method: MethodKind;
  readonly verdict: SuitabilityVerdict;
  readonly reason: LocalText;
};

/**
 * When to expect what, for one species in some container kinds.
 * `colonisedDays`, `pinsDays`, `firstHarvestDays`: calendar days from inoculation.
 * `betweenFlushesDays`: from the last picking of one flush to the first of the next. `flushes`: usual count.
 * `null`: no useful expectation, nothing is announced.
 */
export type SpeciesTiming = {
  readonly containers: readonly ContainerKind[];
  readonly colonisedDays: DayRange | null;
  readonly pinsDays: DayRange | null;
  readonly firstHarvestDays: DayRange;
  readonly betweenFlushesDays: DayRange | null;
  readonly flushes: DayRange | null;
  /** The ranges are common practice; these sources report timing of the species under their own conditions. */
  readonly evidence: readonly SourceKey[];
};

/** Common practice temperatures, in degrees Celsius, of the room or bed. */
export type CelsiusRange = { readonly from: number; readonly to: number };

/** A species as a new network first gets it; every field can be changed by the network. */
export type SpeciesDefault = {
  readonly code: string;
  readonly scientificName: string;
  readonly commonName: LocalText;
  /** NCBI Taxonomy identifier as shown by FoodOn 2025-02-18; `null` where that release shows none. */
  readonly ncbiTaxonId: number | null;
  /** Grows through a substrate soaked in lime water (pH about 12 falling as it carbonates). Common practice. */
  readonly limeTolerant: boolean;
  /** True for the oysters, whose finished BE outside 5-200 % is asked about. */
  readonly isOyster: boolean;
  readonly materials: readonly MaterialSuitability[];
  readonly methods: readonly MethodSuitability[];
  readonly timing: readonly SpeciesTiming[];
  readonly colonisingCelsius: CelsiusRange;
  readonly fruitingCelsius: CelsiusRange;
};
