import { z } from 'zod';

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

/** What a report holds for ever once it is built; later changes of the records do not touch it. */
export const funderReportContent = z.object({
  form: z.literal(1),
  networkName: z.string(),
  from: z.string(),
  to: z.string(),
  builtAt: z.string(),
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
  methods: z.array(methodRow),
});

export type FunderReportContent = z.infer<typeof funderReportContent>;
export type ReportCell = z.infer<typeof cell>;
