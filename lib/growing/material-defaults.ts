import type { LocalText } from './local-text';
import type { MaterialKind, MethodKind } from './vocabulary';

/** Whether a material's dry mass counts as substrate or as nutritional supplement; both are in the BE denominator. */
export type MaterialRole = 'substrate' | 'supplement';

/**
 * A material as a new network first gets it. All figures are common practice unless a comment names a source;
 * a figure worked out from one of them is marked "assumed" wherever it is shown.
 */
export type MaterialDefault = {
  readonly code: string;
  readonly kind: MaterialKind;
  readonly role: MaterialRole;
  readonly name: LocalText;
  /** Moisture as received, percent wet basis; `null` where it varies too much to assume. */
  readonly asReceivedMoistureWetPercent: number | null;
  /** Moisture at filling, after draining, percent wet basis, for the methods where a default is known. */
  readonly drainedMoistureWetPercent: Readonly<Partial<Record<MethodKind, number>>>;
  /** Loose bulk density as received, kilograms per cubic metre, for bed and bath volumes; `null` if not used. */
  readonly bulkKgPerM3: number | null;
};

const soakedStraw = { hot_water_bath: 70, cold_lime_soak: 72, cold_ferment: 74, steam: 68, untreated: 70 };
const soakedHusk = { hot_water_bath: 65, cold_lime_soak: 66, cold_ferment: 68, steam: 62, untreated: 62 };
const wetSawdust = { hot_water_bath: 65, cold_lime_soak: 65, steam: 60, untreated: 60 };
const soakedChips = { hot_water_bath: 55, cold_lime_soak: 55, cold_ferment: 58, steam: 52, untreated: 50 };

function straw(code: string, en: string, es: string): MaterialDefault {
  return {
    code,
    kind: 'straw',
    role: 'substrate',
    name: { en, es },
    // Common practice 8-15 %; hay at target baling reads 13-15 % in UF/IFAS AG181.
    asReceivedMoistureWetPercent: 12,
    drainedMoistureWetPercent: soakedStraw,
    bulkKgPerM3: 60,
  };
}

function husk(code: string, en: string, es: string, bulkKgPerM3: number): MaterialDefault {
  return {
    code,
    kind: 'husk',
    role: 'substrate',
    name: { en, es },
    asReceivedMoistureWetPercent: 11,
    drainedMoistureWetPercent: soakedHusk,
    bulkKgPerM3,
  };
}

/** The materials a new network starts with. */
export const materialDefaults: readonly MaterialDefault[] = [
  straw('wheat_straw', 'Wheat straw', 'Paja de trigo'),
  straw('barley_straw', 'Barley straw', 'Paja de cebada'),
  straw('oat_straw', 'Oat straw', 'Paja de avena'),
  straw('rice_straw', 'Rice straw', 'Paja de arroz'),
  {
    code: 'hardwood_chips',
    kind: 'wood_chips',
    role: 'substrate',
    name: { en: 'Hardwood chips, fresh', es: 'Astilla fresca de madera dura' },
    // Fresh green woody biomass reads 45-50 % wet basis.
    asReceivedMoistureWetPercent: 47,
    drainedMoistureWetPercent: soakedChips,
    bulkKgPerM3: 300,
  },
  {
    code: 'hardwood_sawdust',
    kind: 'sawdust',
    role: 'substrate',
    name: { en: 'Hardwood sawdust, green', es: 'Aserrín verde de madera dura' },
    asReceivedMoistureWetPercent: 45,
    drainedMoistureWetPercent: wetSawdust,
    bulkKgPerM3: 280,
  },
  {
    code: 'fuel_pellets',
    kind: 'sawdust',
    role: 'substrate',
    name: { en: 'Hardwood fuel pellets', es: 'Pellets de madera dura' },
    asReceivedMoistureWetPercent: 7,
    drainedMoistureWetPercent: wetSawdust,
    bulkKgPerM3: 650,
  },
  {
    code: 'hardwood_log',
    kind: 'log_wood',
    role: 'substrate',
    name: { en: 'Hardwood logs, fresh cut', es: 'Troncos recién cortados de madera dura' },
    // FIA table: green hardwood 35-56 % wet basis; white oak 40.6 %. A log's own species is better.
    asReceivedMoistureWetPercent: 42,
    drainedMoistureWetPercent: { untreated: 42 },
    bulkKgPerM3: null,
  },
  {
    code: 'corn_stalks',
    kind: 'corn_residue',
    role: 'substrate',
    name: { en: 'Corn stalks and husks, dry', es: 'Caña y hoja de maíz secas' },
    asReceivedMoistureWetPercent: 13,
    drainedMoistureWetPercent: {
      hot_water_bath: 70,
      cold_lime_soak: 71,
      cold_ferment: 73,
      steam: 67,
      untreated: 68,
    },
    bulkKgPerM3: 60,
  },
  {
    code: 'corn_cobs',
    kind: 'corn_residue',
    role: 'substrate',
    name: { en: 'Corn cobs, crushed', es: 'Olote triturado' },
    // Common practice: stored cobs 8-15 %.
    asReceivedMoistureWetPercent: 12,
    drainedMoistureWetPercent: {
      hot_water_bath: 62,
      cold_lime_soak: 63,
      cold_ferment: 65,
      steam: 60,
      untreated: 60,
    },
    bulkKgPerM3: 200,
  },
  {
    code: 'coffee_grounds',
    kind: 'coffee_grounds',
    role: 'substrate',
    name: { en: 'Spent coffee grounds', es: 'Poso de café' },
    // Common practice, uncertain: 55-65 % from a filter machine, more when not drained.
    asReceivedMoistureWetPercent: 60,
    drainedMoistureWetPercent: { steam: 62, untreated: 60 },
    bulkKgPerM3: 420,
  },
  husk('coffee_husk', 'Coffee husk, dry', 'Cascarilla de café seca', 180),
  husk('rice_husk', 'Rice husk', 'Cascarilla de arroz', 110),
  husk('cottonseed_hulls', 'Cottonseed hulls', 'Cascarilla de algodón', 190),
  husk('soy_hulls', 'Soybean hulls', 'Cascarilla de soya', 350),
  {
    code: 'cardboard',
    kind: 'cardboard',
    role: 'substrate',
    name: { en: 'Clean brown cardboard', es: 'Cartón limpio sin tinta' },
    asReceivedMoistureWetPercent: 8,
    drainedMoistureWetPercent: { hot_water_bath: 68, cold_lime_soak: 68, untreated: 68 },
    bulkKgPerM3: 50,
  },
  {
    code: 'spent_oyster_substrate',
    kind: 'spent_substrate',
    role: 'substrate',
    name: { en: 'Spent oyster substrate', es: 'Sustrato agotado de seta ostra' },
    asReceivedMoistureWetPercent: null,
    drainedMoistureWetPercent: {},
    bulkKgPerM3: 300,
  },
  {
    code: 'wheat_bran',
    kind: 'other',
    role: 'supplement',
    name: { en: 'Wheat bran', es: 'Salvado de trigo' },
    asReceivedMoistureWetPercent: 12,
    drainedMoistureWetPercent: {},
    bulkKgPerM3: 260,
  },
  {
    code: 'rice_bran',
    kind: 'other',
    role: 'supplement',
    name: { en: 'Rice bran', es: 'Salvado de arroz' },
    asReceivedMoistureWetPercent: 11,
    drainedMoistureWetPercent: {},
    bulkKgPerM3: 300,
  },
];
