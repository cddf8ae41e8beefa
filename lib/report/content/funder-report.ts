import { z } from 'zod';
import { costParts } from '@/lib/growing/batch-cost';
import { practiceKinds } from '@/lib/growing/programme-vocabulary';
import { groundParts } from './ground';
import { reportIndicators } from './report-indicators.input';

const cell = z.discriminatedUnion('kind', [
  z.object({ key: z.string(), kind: z.literal('shown'), amount: z.number(), sites: z.number() }),
  z.object({ key: z.string(), kind: z.literal('protected') }),
]);

const table = z.object({ total: cell, cells: z.array(cell) });

const kept = z.object({ kind: z.literal('protected') });

/** A number of people, told once enough of them stand behind it. */
const heads = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('shown'), people: z.number() }),
  kept,
]);

/** A figure as the analysis made it; its shape is checked where it is made, here only that it is one. */
const figure = z.looseObject({ kind: z.enum(['figure', 'counts', 'cannot']) });

const methodRow = z.object({
  /** Of its sums in the ground; reports built before have none. */
  key: z.string().optional(),
  container: z.string(),
  methodEn: z.string(),
  methodEs: z.string(),
  contamination: z.union([figure, kept]),
  yield: z.union([figure, kept]),
});

const period = z.object({ from: z.string(), to: z.string() });

const range = z.object({ lowGrams: z.number(), highGrams: z.number() });

/** Protein in the shown harvest of a species; species without a published composition say so. */
const proteinRow = z.object({
  speciesEn: z.string(),
  speciesEs: z.string(),
  fresh: cell,
  range: z.discriminatedUnion('kind', [
    range.extend({ kind: z.literal('range'), byRule: range.optional() }),
    z.object({ kind: z.literal('outside-table') }),
    kept,
  ]),
});

const change = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('percent'), percent: z.number() }),
  /** Nothing in the baseline period: a change from nothing has no percentage. */
  z.object({ kind: z.literal('no-baseline') }),
  kept,
]);

/** Amounts are grams, or minor units of the currency named. */
const changeRow = z.object({
  key: z.string(),
  currency: z.string().optional(),
  before: cell,
  now: cell,
  change,
});

const practiceRow = z.object({ methodEn: z.string(), methodEs: z.string(), sites: cell });

const adoptedRow = z.object({
  practice: z.enum(practiceKinds),
  adopted: cell,
  standing: cell,
  growers: heads,
});

/** Means of the answers to one question; they are kept back together with their counts. */
const answersRow = z.object({
  wording: z.string(),
  scaleMost: z.number(),
  leastLabel: z.string().nullable(),
  mostLabel: z.string().nullable(),
  answers: z.discriminatedUnion('kind', [
    z.object({
      kind: z.literal('shown'),
      nBefore: z.number(),
      nAfter: z.number(),
      meanBefore: z.number().nullable(),
      meanAfter: z.number().nullable(),
      change: z.number().nullable(),
    }),
    kept,
  ]),
});

const trainings = z.object({
  trainings: z.number(),
  attendances: heads,
  people: heads,
  unnamedHeads: heads,
  leftOutWithoutConsent: z.number(),
  answers: z.array(answersRow),
});

const salesOfCurrency = z.object({
  currency: z.string(),
  /** Minor units by outlet. */
  outlets: table,
  grams: cell,
  customers: cell,
  /** Sales, and how many of them counted their customers; only beside a shown total. */
  sales: z.number().optional(),
  salesWithCustomers: z.number().optional(),
});

/** Minor units for a kilogram as the analysis made it. */
const perKilogram = z.looseObject({ kind: z.enum(['figure', 'cannot']) });

const costRow = z.object({
  key: z.string(),
  methodEn: z.string(),
  methodEs: z.string(),
  cost: z.union([perKilogram, kept]),
  margin: z.union([perKilogram, kept]),
  labourMinutesPerKg: z.number().nullable(),
});

const costs = z.object({
  currency: z.string(),
  /** Null: work is not in the sums. */
  labourMinorPerHour: z.number().nullable(),
  batches: z.number(),
  fullBatches: z.number(),
  missing: z.array(z.object({ part: z.enum(costParts), batches: z.number() })),
  all: costRow,
  methods: z.array(costRow),
});

const sitesBehind = z.object({
  named: z.array(z.string()),
  anonymous: z.number(),
  leftOut: z.number(),
  left: z.object({ counted: z.number(), withdrawn: z.number() }),
});

/** What a report holds for ever once it is built; later changes of the records do not touch it. */
export const funderReportContent = z.object({
  /** 1: harvest, residues and methods only; 2: with a baseline and chosen indicators. */
  form: z.union([z.literal(1), z.literal(2)]),
  networkName: z.string(),
  programme: z.string().optional(),
  ...period.shape,
  builtAt: z.string(),
  indicators: z.array(z.enum(reportIndicators)).default(['harvest', 'residues', 'methods']),
  baseline: period.optional(),
  sitesActive: z.number(),
  /** Sites that agreed to be named, how many more there are, and how many have left; by the agreements when it was built. */
  sites: sitesBehind.optional(),
  peopleActive: z.union([z.number(), heads]),
  batchesStarted: z.union([z.number(), cell]),
  batchesWithoutDryMass: z.number(),
  rule: z.object({ minSites: z.number(), topTwoPercent: z.number() }),
  /** Fresh grams by where they went. */
  harvest: table,
  /** Dry grams of residues by kind of material; `assumed`: kinds that rest partly on an assumed moisture. */
  residues: table,
  /** What was grown on and is no residue; reports built before count it among the residues. */
  residuesLeftOut: z.array(cell).optional(),
  assumedResidues: z.array(z.string()),
  protein: z.array(proteinRow).default([]),
  /** Sites that treated a batch so for the first time, and practices written down as taken up. */
  practices: z.array(practiceRow).default([]),
  adopted: z.array(adoptedRow).default([]),
  trainings: trainings.optional(),
  sales: z.array(salesOfCurrency).default([]),
  costs: costs.optional(),
  /** The period against the baseline; empty without one. */
  changes: z.array(changeRow).default([]),
  methods: z.array(methodRow),
  /** Parts that stand as in an earlier version, and in which: what changed since would tell of few sites. */
  carried: z.partialRecord(z.enum(groundParts), z.number()).default({}),
  /** Parts of which figures are kept back for what they would tell beside other published reports. */
  keptBack: z.array(z.enum(groundParts)).optional(),
});

export type FunderReportContent = z.infer<typeof funderReportContent>;
export type ReportCell = z.infer<typeof cell>;
export type ReportTable = z.infer<typeof table>;
export type ReportHeads = z.infer<typeof heads>;
