/**
 * What is true in the demo network, written down so that the figures can be held against it. Effects on
 * contamination are on the logit scale per unit; effects on yield multiply BE.
 */
export const truths = {
  /** One of those that show every planted truth by its most likely answer; coverage over many seeds is tested apart. */
  seed: 20_261_206,
  /** Seasons of the story, each a year, the last one ending today. */
  seasons: 3,
  batchesPerSite: 86,
  /** Logit of contamination of a bag at an average site with an average lot under the hot-water bath. */
  baseLogit: -2.5,
  /** At the same site, lime loses about six more bags in a hundred than the bath. */
  methodLogit: {
    hot_water_bath: 0,
    cold_lime_soak: 0.6,
    cold_ferment: 0.9,
    steam: -0.35,
    untreated: 0.3,
  },
  methodYield: { hot_water_bath: 1, cold_lime_soak: 0.97, cold_ferment: 0.88, steam: 1.04, untreated: 1 },
  siteDeviation: 0.35,
  /** Sites that mostly lime are the tidy ones: the raw table makes lime look as good as the bath. */
  tidySiteLogit: -0.75,
  lotDeviation: 0.25,
  /** The spawn lot that went wrong, by its place among the lots of its species, and by how much. */
  badLot: { code: 'S-PEARL-07', logit: 2.1 },
  runDeviation: 0.35,
  /** The site whose hot-water bath is taken off after about 40 minutes. */
  shortBath: { site: 'TARN', minutes: 40, logit: 1.1 },
  /** Spring of the second season was wet. */
  wetSeason: { season: 1, months: [3, 4, 5], logit: 0.7 },
  /** Share of batches whose moisture was not measured, and of those nobody filled in at all. */
  assumedMoisture: 0.3,
  missingMoisture: 0.05,
  /** Share of batches that nobody looked at again once their window had passed. */
  neverLookedAgain: 0.06,
  /** Share of finished batches whose harvest nobody weighed. */
  notWeighed: 0.02,
  beDeviation: 0.28,
} as const;
