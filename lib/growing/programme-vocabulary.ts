/** What a training was about. */
export const trainingTopics = [
  'growing',
  'treatment',
  'spawn',
  'hygiene',
  'food_safety',
  'cooking',
  'selling',
  'other',
] as const;
export type TrainingTopic = (typeof trainingTopics)[number];

/** Through whom mushrooms reach those who eat them, in the words of local food programmes. */
export const outletKinds = [
  'farm_gate',
  'farmers_market',
  'box_scheme',
  'shop',
  'restaurant',
  'institution',
  'food_hub',
  'online',
  'other',
] as const;
export type OutletKind = (typeof outletKinds)[number];

/** Ways of working that a site takes up. */
export const practiceKinds = [
  'heat_treatment',
  'cold_treatment',
  'local_residues',
  'own_spawn',
  'hygiene',
  'food_safety',
  'record_keeping',
  'second_life',
  'composting',
  'other',
] as const;
export type PracticeKind = (typeof practiceKinds)[number];
