/**
 * Trials of the story: one that is over and published, one that runs, one still planned. All are in buckets, so that the
 * figures of bags stay those of the story. `truth`: share of buckets lost in each arm at a middling site.
 */
export const finishedTrial = {
  seed: 'larkmoor-buckets',
  /** Of what became of its buckets: a stream of its own, whatever the rest of the story draws. */
  outcomeSeed: 20_261_125,
  plan: {
    title: 'Ferment or bath in buckets',
    question: 'Does fermenting straw cold lose more buckets than the hot-water bath?',
    outcome: 'contamination',
    expectedPercent: 10,
    differencePoints: 25,
    likeness: 0.1,
    unitsPerRun: 10,
    powerPercent: 80,
    blocks: 3,
    daysBetweenBlocks: 14,
    lateAfterDays: 14,
  },
  arms: [
    { label: 'hot-water bath', method: 'hot_water_bath' },
    { label: 'cold ferment', method: 'cold_ferment' },
  ],
  sites: ['ASHW', 'DUNN', 'MILL', 'ROOK'],
  truth: [0.1, 0.4],
  /** Units of one run are alike by this. */
  likeness: 0.1,
  startedDaysAgo: 230,
  endedDaysAgo: 60,
} as const;

export const runningTrial = {
  seed: 'larkmoor-lime',
  plan: {
    title: 'Lime or bath for buckets',
    question: 'Do buckets give less after a cold lime soak than after the hot-water bath?',
    outcome: 'yield',
    expectedPercent: 70,
    differencePoints: -25,
    runSpreadPoints: 25,
    unitsPerRun: 8,
    powerPercent: 80,
    blocks: 4,
    daysBetweenBlocks: 14,
    lateAfterDays: 14,
  },
  arms: [
    { label: 'hot-water bath', method: 'hot_water_bath' },
    { label: 'cold lime soak', method: 'cold_lime_soak' },
  ],
  sites: ['GORSE', 'MILL', 'QUARR'],
  startedDaysAgo: 21,
  /** Runs made so far, by site. */
  made: { GORSE: 2, MILL: 1, QUARR: 1 },
} as const;

export const plannedTrial = {
  plan: {
    title: 'Half the spawn',
    question: 'Do buckets with half the spawn lose more to contamination?',
    outcome: 'contamination',
    expectedPercent: 12,
    differencePoints: 12,
    likeness: 0.1,
    unitsPerRun: 10,
    powerPercent: 80,
    daysBetweenBlocks: 14,
    lateAfterDays: 14,
  },
  arms: [
    { label: '10 % spawn', method: null },
    { label: '5 % spawn', method: null },
  ],
  sites: ['ASHW', 'COLD', 'MILL', 'ROOK', 'TARN'],
  startsInDays: 30,
} as const;
