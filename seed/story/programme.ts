import type { OutletKind, PracticeKind, TrainingTopic } from '@/lib/growing/programme-vocabulary';

/** Trainings held, days before the demo is made. Names, answers and heads are invented. */
export type StoryTraining = {
  readonly siteCode: string;
  readonly ago: number;
  readonly title: string;
  readonly topic: TrainingTopic;
  readonly heads: number | null;
  readonly minutes: number;
  /** Places in `storyParticipants`. */
  readonly came: readonly number[];
  readonly before: string;
  readonly after: string;
};

export const storyParticipants = [
  { siteCode: 'ASHW', name: 'Bryony Ashdown', consents: ['counted', 'named', 'pictured'] },
  { siteCode: 'ASHW', name: 'Cob Heron', consents: ['counted'] },
  { siteCode: 'ASHW', name: 'Dell Hart', consents: [] },
  { siteCode: 'BRIAR', name: 'Elder Quill', consents: ['counted', 'named'] },
  { siteCode: 'BRIAR', name: 'Fern Oakley', consents: ['counted'] },
  { siteCode: 'GORSE', name: 'Gale Thorn', consents: ['counted', 'pictured'] },
  { siteCode: 'GORSE', name: 'Hazel Winterbourne', consents: ['counted'] },
  { siteCode: 'LIND', name: 'Ivo Tamarisk', consents: ['counted'] },
] as const;

export const storyQuestion = {
  wording: 'I can make straw clean enough to grow on',
  scaleMost: 5,
  leastLabel: 'not at all',
  mostLabel: 'surely',
} as const;

export const storyTrainings: readonly StoryTraining[] = [
  {
    ...{ siteCode: 'ASHW', ago: 420, title: 'First bags: from straw to spawn', topic: 'growing', heads: 12 },
    ...{ minutes: 180, came: [0, 1, 2], before: '1 1 2 2 1 3 2 1 1 2', after: '3 4 4 3 5 4 4 3 4 4' },
  },
  {
    ...{ siteCode: 'BRIAR', ago: 300, title: 'Lime without burns', topic: 'treatment', heads: null },
    ...{ minutes: 120, came: [0, 3, 4], before: '2 3 2', after: '4 5 4' },
  },
  {
    ...{ siteCode: 'GORSE', ago: 150, title: 'Clean hands, clean bags', topic: 'hygiene', heads: 9 },
    ...{ minutes: 90, came: [1, 5, 6], before: '2 2 3 3 2 4', after: '4 4 5 4 3 5' },
  },
  {
    ...{ siteCode: 'LIND', ago: 60, title: 'Selling what you pick', topic: 'selling', heads: 15 },
    ...{ minutes: 120, came: [0, 3, 5, 7], before: '', after: '' },
  },
];

/** Prices in cents for a kilogram, by outlet; what is sold each month is a share of what was weighed. */
export const storyOutlets: readonly {
  readonly siteCode: string;
  readonly outlet: OutletKind;
  readonly centsPerKg: number;
}[] = [
  { siteCode: 'ASHW', outlet: 'farmers_market', centsPerKg: 1650 },
  { siteCode: 'BRIAR', outlet: 'box_scheme', centsPerKg: 1400 },
  { siteCode: 'ELDER', outlet: 'restaurant', centsPerKg: 1280 },
  { siteCode: 'GORSE', outlet: 'farm_gate', centsPerKg: 1500 },
  { siteCode: 'KESTR', outlet: 'food_hub', centsPerKg: 1120 },
];

export const storyPractices: readonly {
  readonly siteCode: string;
  readonly practice: PracticeKind;
  readonly ago: number;
  readonly growers: number | null;
}[] = [
  { siteCode: 'BRIAR', practice: 'cold_treatment', ago: 410, growers: 6 },
  { siteCode: 'GORSE', practice: 'cold_treatment', ago: 280, growers: 4 },
  { siteCode: 'GORSE', practice: 'hygiene', ago: 140, growers: 5 },
  { siteCode: 'LIND', practice: 'second_life', ago: 200, growers: null },
  { siteCode: 'ASHW', practice: 'record_keeping', ago: 380, growers: 8 },
];
