/** What a report may tell; the coordinator chooses. In the order in which a report tells it. */
export const reportIndicators = [
  'harvest',
  'protein',
  'residues',
  'practices',
  'trainings',
  'sales',
  'costs',
  'methods',
] as const;

export type ReportIndicator = (typeof reportIndicators)[number];

/** Parts of a report that the coordinator's words may stand in: before everything, and with each indicator. */
export const wordPlaces = ['opening', ...reportIndicators, 'closing'] as const;

export type WordPlace = (typeof wordPlaces)[number];
