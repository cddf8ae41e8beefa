/**
 * The fixed words of the records. Every list is closed: the database, the forms and the exports use exactly
 * these values, and screens translate them. Order is the order in which a form offers them.
 */

/** What a unit grows in. A bed is one unit; bags, beds and logs are never pooled in a rate. */
export const containerKinds = ['bag', 'bucket', 'tray', 'bed', 'log', 'block'] as const;
export type ContainerKind = (typeof containerKinds)[number];

/** How the substrate was treated against competitors before spawning. */
export const methodKinds = [
  'hot_water_bath',
  'cold_lime_soak',
  'cold_ferment',
  'steam',
  'untreated',
] as const;
export type MethodKind = (typeof methodKinds)[number];

/** What the substrate is made of. */
export const materialKinds = [
  'straw',
  'wood_chips',
  'sawdust',
  'log_wood',
  'corn_residue',
  'coffee_grounds',
  'husk',
  'cardboard',
  'spent_substrate',
  'other',
] as const;
export type MaterialKind = (typeof materialKinds)[number];

/** What a person sees (or smells) on a contaminated unit. A sign, never a diagnosis. */
export const contaminationSignKinds = [
  'green',
  'blue_green',
  'black',
  'orange_pink',
  'grey_cobweb',
  'yellow',
  'wet_brown',
  'ink_caps',
  'flies',
  'mites',
  'sour_smell',
  'other',
] as const;
export type ContaminationSignKind = (typeof contaminationSignKinds)[number];

/** Why a unit was lost other than by contamination. */
export const lossCauseKinds = ['dried_out', 'overheated', 'eaten', 'damaged', 'other'] as const;
export type LossCauseKind = (typeof lossCauseKinds)[number];

/** Where a moisture figure comes from. */
export const moistureSources = ['measured', 'assumed', 'none'] as const;
export type MoistureSource = (typeof moistureSources)[number];

/** What carries the mycelium in a spawn lot. */
export const spawnForms = ['grain', 'sawdust', 'plug', 'other'] as const;

/** Whether stem bases were cut off before weighing. */
export const trimStates = ['trimmed', 'as_picked'] as const;
export type TrimState = (typeof trimStates)[number];

/** Where picked mushrooms went. */
export const destinations = ['sold', 'given', 'kept', 'discarded'] as const;
export type Destination = (typeof destinations)[number];

/** Where a treatment reading was taken: the middle of the load, or the water around it. */
export const readingPlaces = ['load_middle', 'water'] as const;
export type ReadingPlace = (typeof readingPlaces)[number];

/** From which weighing or measure a batch's dry mass was worked out; `none`: it cannot be. */
export const dryMassOrigins = [
  'filled_mass',
  'mass_before_treatment',
  'log_size',
  'log_green_mass',
  'none',
] as const;
export type DryMassOrigin = (typeof dryMassOrigins)[number];

/** What was done with contaminated units. Units left, isolated or cut out still live; the rest are gone. */
export const findingActions = ['left_in_place', 'isolated', 'cut_out', 'discarded', 'buried'] as const;
export type FindingActionKind = (typeof findingActions)[number];

/** What a component of a batch is; additives (gypsum, lime) stay out of the dry mass that BE divides by. */
export const componentRoles = ['substrate', 'supplement', 'additive'] as const;
export type ComponentRoleKind = (typeof componentRoles)[number];

/** How spent units go on: buried in clean soil, mulched over, or laid out as they are (common practice). */
export const secondLifeWays = [
  'buried_in_soil',
  'mulched_with_straw',
  'mulched_with_chips',
  'laid_out',
  'other',
] as const;
export type SecondLifeWay = (typeof secondLifeWays)[number];

/** What a layer of a bed is made of. */
export const bedLayerMaterials = [
  'wood_chips',
  'sawdust',
  'cardboard',
  'straw',
  'spent_substrate',
  'compost',
  'soil',
  'spawn',
  'other',
] as const;

/** What is read of a place: degrees Celsius, percent relative humidity, parts per million of carbon dioxide. */
export const conditionMeasures = ['temperature', 'humidity', 'carbon_dioxide'] as const;
export type ConditionMeasure = (typeof conditionMeasures)[number];
