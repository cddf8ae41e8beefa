import type { LocalText } from './local-text';
import type { FermentWindow, HeatWindow, LimeWindow, TreatmentWindow } from './treatment-window';
import type { MethodKind } from './vocabulary';

/** A hazard whose caution is shown where the step is taken; the wording belongs to the screens. */
export type CautionCode =
  | 'hydrated_lime'
  | 'lime_water_disposal'
  | 'hot_water'
  | 'burner'
  | 'lifting'
  | 'spores';

/** A treatment method as a new network first gets it. `window` is `null` where there is nothing to check. */
export type MethodDefault = {
  readonly code: string;
  readonly kind: MethodKind;
  readonly name: LocalText;
  readonly window: TreatmentWindow | null;
  readonly cautions: readonly CautionCode[];
};

/**
 * 150-180 F (66-82 C) for 1-2 h, counted from when the middle of the load is inside, then cooled to room
 * temperature. Common practice. The limits are 150 F and 180 F to a tenth of a degree Celsius.
 */
export const hotWaterWindowDefault: HeatWindow = {
  kind: 'heat',
  place: 'load_middle',
  lowCelsius: 65.6,
  highCelsius: 82.2,
  minMinutes: 60,
  maxMinutes: 120,
  allowedDipMinutes: 5,
  maxGapMinutes: 30,
  spawnAtOrBelowCelsius: 27,
};

/** Steam: the middle of the load at 90 C or more for 1 h or more (SANCHEZ_SH control: 90 C for 1 h). Common practice. */
export const steamWindowDefault: HeatWindow = {
  kind: 'heat',
  place: 'load_middle',
  lowCelsius: 90,
  highCelsius: 102,
  minMinutes: 60,
  maxMinutes: null,
  allowedDipMinutes: 5,
  maxGapMinutes: 45,
  spawnAtOrBelowCelsius: 27,
};

/** pH 12 up to saturation at that water temperature + 0.2, for 6-12 h. Common practice. */
export const limeWindowDefault: LimeWindow = {
  kind: 'lime',
  minPh: 12,
  aboveSaturationPh: 0.2,
  minMinutes: 360,
  maxMinutes: 720,
};

/** Submerged 5-15 days, then drained. Common practice; no published trial with numbers was found. */
export const fermentWindowDefault: FermentWindow = { kind: 'ferment', minDays: 5, maxDays: 15 };

/** The five methods a new network starts with. */
export const methodDefaults: readonly MethodDefault[] = [
  {
    code: 'hot_water_bath',
    kind: 'hot_water_bath',
    name: { en: 'Hot-water bath', es: 'Baño de agua caliente' },
    window: hotWaterWindowDefault,
    cautions: ['hot_water', 'burner', 'lifting'],
  },
  {
    code: 'cold_lime_soak',
    kind: 'cold_lime_soak',
    name: { en: 'Cold lime soak', es: 'Remojo en agua de cal' },
    window: limeWindowDefault,
    cautions: ['hydrated_lime', 'lime_water_disposal', 'lifting'],
  },
  {
    code: 'cold_ferment',
    kind: 'cold_ferment',
    name: { en: 'Cold-water fermentation', es: 'Fermentación en agua fría' },
    window: fermentWindowDefault,
    cautions: ['lifting', 'spores'],
  },
  {
    code: 'steam',
    kind: 'steam',
    name: { en: 'Steam', es: 'Vapor' },
    window: steamWindowDefault,
    cautions: ['hot_water', 'burner', 'lifting'],
  },
  {
    code: 'untreated',
    kind: 'untreated',
    name: { en: 'Untreated', es: 'Sin tratar' },
    window: null,
    cautions: ['spores'],
  },
];
