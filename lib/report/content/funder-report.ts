import { z } from 'zod';
import { reportIndicators } from './report-indicators.input';

const cell = z.discriminatedUnion('kind', [
  z.object({ key: z.string(), kind: z.literal('shown'), amount: z.number(), sites: z.number() }),
  z.object({ key: z.string(), kind: z.literal('protected') }),
]);

const table = z.object({ total: cell, cells: z.array(cell) });

/** A figure as the analysis made it; its shape is checked where it is made, here only that it is one. */
const figure = z.looseObject({ kind: z.enum(['figure', 'counts', 'cannot']) });
const protectedFigure = z.object({ kind: z.literal('protected') });

const methodRow = z.object({
  container: z.string(),
  methodEn: z.string(),
  methodEs: z.string(),
  contamination: z.union([figure, protectedFigure]),
  yield: z.union([figure, protectedFigure]),
});

const period = z.object({ from: z.string(), to: z.string() });

/** Protein in the shown harvest of a species; species without a published composition say so. */
const proteinRow = z.object({
  speciesEn: z.string(),
  speciesEs: z.string(),
  fresh: cell,
  range: z.discriminatedUnion('kind', [
    z.object({
      kind: z.literal('range'),
      lowGrams: z.number(),
      highGrams: z.number(),
      byRule: z.object({ lowGrams: z.number(), highGrams: z.number() }).optional(),
    }),
    z.object({ kind: z.literal('outside-table') }),
    z.object({ kind: z.literal('protected') }),
  ]),
});

const change = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('percent'), percent: z.number() }),
  /** Nothing in the baseline period: a change from nothing has no percentage. */
  z.object({ kind: z.literal('no-baseline') }),
  z.object({ kind: z.literal('protected') }),
]);

const changeRow = z.object({ key: z.string(), before: cell, now: cell, change });

const practiceRow = z.object({ methodEn: z.string(), methodEs: z.string(), sites: cell });

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
  peopleActive: z.number(),
  batchesStarted: z.number(),
  batchesWithoutDryMass: z.number(),
  rule: z.object({ minSites: z.number(), topTwoPercent: z.number() }),
  /** Fresh grams by where they went. */
  harvest: table,
  /** Dry grams of residues by kind of material; `assumed`: kinds that rest partly on an assumed moisture. */
  residues: table,
  assumedResidues: z.array(z.string()),
  protein: z.array(proteinRow).default([]),
  /** Sites that treated a batch so for the first time. */
  practices: z.array(practiceRow).default([]),
  /** The period against the baseline; empty without one. */
  changes: z.array(changeRow).default([]),
  methods: z.array(methodRow),
});

export type FunderReportContent = z.infer<typeof funderReportContent>;
export type ReportCell = z.infer<typeof cell>;
export type ReportTable = z.infer<typeof table>;
