/** Wood and bark of one tree species, for the dry mass of a log. */
export type LogWood = {
  /** Species code of the US Forest Inventory and Analysis (FIA) reference table. */
  readonly fiaCode: number;
  readonly name: { readonly en: string; readonly es: string };
  /** Basic specific gravity of wood: oven-dry mass / green volume, relative to water. */
  readonly woodSpecificGravity: number;
  /** Specific gravity of wood at 12 % moisture (dry basis) volume. */
  readonly woodSpecificGravityAt12: number;
  readonly barkSpecificGravity: number;
  /** Moisture of green wood and bark, percent DRY basis. */
  readonly woodMoistureDryPercent: number;
  readonly barkMoistureDryPercent: number;
  /** Bark volume as percent of wood volume. */
  readonly barkVolumePercent: number;
  /** Green mass / oven-dry mass of wood with bark. */
  readonly greenToDryRatio: number;
};

type Row = readonly [number, string, string, number, number, number, number, number, number, number];

/*
 * USDA Forest Service FIA table REF_SPECIES, which carries Miles & Smith 2009, Research Note NRS-38. Columns:
 * FIA code, name, Spanish name (common practice), wood SG green, wood SG at 12 %, bark SG, wood moisture db %,
 * bark moisture db %, bark volume %, green/dry.
 */
const rows: readonly Row[] = [
  [802, 'White oak', 'Roble blanco', 0.6, 0.68, 0.56, 68.27, 88.88, 16.0, 1.7094],
  [833, 'Northern red oak', 'Roble rojo del norte', 0.56, 0.63, 0.68, 83.14, 90.9, 20.0, 1.8466],
  [837, 'Black oak', 'Roble negro', 0.56, 0.61, 0.6, 83.14, 89.63, 18.5, 1.8422],
  [806, 'Scarlet oak', 'Roble escarlata', 0.6, 0.67, 0.71, 70.93, 48.97, 22.0, 1.664],
  [812, 'Southern red oak', 'Roble rojo del sur', 0.52, 0.59, 0.68, 97.23, 48.47, 22.0, 1.8634],
  [823, 'Bur oak', 'Roble de bellota grande', 0.58, 0.64, 0.54, 74.07, 89.93, 16.0, 1.7612],
  [827, 'Water oak', 'Roble de agua', 0.56, 0.63, 0.62, 83.14, 73.18, 16.0, 1.8164],
  [832, 'Chestnut oak', 'Roble castaño', 0.57, 0.66, 0.54, 77.12, 60.26, 23.0, 1.7411],
  [318, 'Sugar maple', 'Arce azucarero', 0.56, 0.63, 0.54, 57.39, 89.93, 15.6, 1.6165],
  [316, 'Red maple', 'Arce rojo', 0.49, 0.54, 0.6, 63.53, 78.95, 8.6, 1.65],
  [317, 'Silver maple', 'Arce plateado', 0.44, 0.47, 0.57, 67.55, 79.93, 8.6, 1.6879],
  [371, 'Yellow birch', 'Abedul amarillo', 0.55, 0.62, 0.62, 71.91, 60.26, 9.8, 1.7075],
  [372, 'Sweet birch', 'Abedul dulce', 0.6, 0.65, 0.62, 73.0, 52.5, 9.8, 1.7111],
  [375, 'Paper birch', 'Abedul de papel', 0.48, 0.55, 0.56, 73.6, 51.68, 12.6, 1.7079],
  [531, 'American beech', 'Haya americana', 0.56, 0.64, 0.67, 54.54, 88.96, 6.0, 1.5684],
  [701, 'Eastern hophornbeam (ironwood)', 'Ostria (palo fierro)', 0.63, 0.7, 0.5, 52.62, 89.1, 15.0, 1.565],
  [391, 'American hornbeam (musclewood)', 'Carpe americano', 0.58, 0.7, 0.55, 46.45, 89.4, 8.6, 1.4969],
  [611, 'Sweetgum', 'Liquidámbar', 0.46, 0.52, 0.42, 74.2, 90.79, 15.0, 1.7619],
  [621, 'Yellow-poplar', 'Tulípero', 0.4, 0.42, 0.38, 95.0, 123.53, 18.0, 1.9917],
  [746, 'Quaking aspen', 'Álamo temblón', 0.35, 0.38, 0.5, 128.94, 101.92, 14.4, 2.2433],
  [743, 'Bigtooth aspen', 'Álamo dentado', 0.36, 0.39, 0.59, 91.42, 90.14, 14.4, 1.9117],
  [742, 'Eastern cottonwood', 'Álamo de Virginia', 0.37, 0.4, 0.38, 116.57, 56.03, 22.0, 2.0541],
  [351, 'Red alder', 'Aliso rojo', 0.37, 0.41, 0.56, 99.24, 74.57, 12.0, 1.9545],
  [762, 'Black cherry', 'Cerezo negro', 0.47, 0.5, 0.63, 53.45, 90.78, 9.2, 1.5755],
  [541, 'White ash', 'Fresno blanco', 0.55, 0.6, 0.5, 45.69, 89.1, 16.0, 1.512],
  [402, 'Bitternut hickory', 'Nogal amargo', 0.6, 0.66, 0.6, 70.93, 60.25, 16.0, 1.6946],
  [403, 'Pignut hickory', 'Nogal de cerdo', 0.66, 0.75, 0.6, 65.11, 60.25, 16.0, 1.6449],
  [407, 'Shagbark hickory', 'Nogal de corteza lanuda', 0.64, 0.72, 0.72, 60.25, 33.54, 16.0, 1.5618],
  [951, 'American basswood', 'Tilo americano', 0.32, 0.37, 0.48, 105.34, 90.31, 10.5, 2.033],
  [693, 'Blackgum', 'Tupelo negro', 0.46, 0.5, 0.44, 101.0, 71.18, 14.0, 1.9748],
  [920, 'Willow', 'Sauce', 0.36, 0.39, 0.5, 127.0, 99.0, 16.0, 2.2191],
  [462, 'Hackberry', 'Almez', 0.49, 0.53, 0.49, 63.53, 89.69, 15.0, 1.6694],
  [421, 'American chestnut', 'Castaño americano', 0.4, 0.43, 0.5, 120.35, 89.1, 15.0, 2.1542],
];

/** Every tree of the table that growers inoculate, in the table's own order. */
export const logWoods: readonly LogWood[] = rows.map(
  ([fiaCode, en, es, green, at12, bark, woodMc, barkMc, barkVolume, ratio]) => ({
    fiaCode,
    name: { en, es },
    woodSpecificGravity: green,
    woodSpecificGravityAt12: at12,
    barkSpecificGravity: bark,
    woodMoistureDryPercent: woodMc,
    barkMoistureDryPercent: barkMc,
    barkVolumePercent: barkVolume,
    greenToDryRatio: ratio,
  }),
);

/** The tree with an FIA code, or undefined. */
export function findLogWood(fiaCode: number): LogWood | undefined {
  return logWoods.find((wood) => wood.fiaCode === fiaCode);
}
