import { z } from 'zod';

/** A figure as the analysis made it; its shape is checked where it is made, here only that it is one. */
const figure = z.looseObject({ kind: z.enum(['figure', 'counts', 'cannot']) });

const comparison = z.object({
  arms: z.array(
    z.object({ armId: z.string(), planned: z.number(), made: z.number(), counted: z.number(), figure }),
  ),
  contrasts: z.array(
    z.object({
      armId: z.string(),
      points: figure,
      pValue: z.number().nullable(),
      verdict: z.enum(['more', 'fewer', 'cannot-tell']),
    }),
  ),
});

/** What a published trial holds for ever; it names no site and no person. */
export const trialResultContent = z.object({
  form: z.literal(1),
  title: z.string(),
  question: z.string(),
  outcome: z.enum(['contamination', 'yield']),
  speciesEn: z.string(),
  speciesEs: z.string(),
  containerKind: z.enum(['bag', 'bucket', 'tray', 'bed', 'log', 'block']),
  arms: z.array(z.object({ id: z.string(), label: z.string() })),
  sites: z.number(),
  blocks: z.number(),
  unitsPerRun: z.number(),
  expectedPercent: z.number(),
  differencePoints: z.number(),
  powerPercent: z.number(),
  seed: z.string(),
  startedAt: z.string(),
  endedAt: z.string(),
  endNote: z.string(),
  planned: z.number(),
  made: z.number(),
  /** Runs that departed from the plan, by how. */
  departures: z.array(z.object({ kind: z.string(), runs: z.number() })),
  notes: z.array(z.object({ notedAt: z.string(), note: z.string() })),
  answer: z.object({ asDrawn: comparison, asPlanned: comparison }),
  asOf: z.string(),
});

export type TrialResultContent = z.infer<typeof trialResultContent>;
