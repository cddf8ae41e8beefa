import { z } from 'zod';

const interval = z
  .discriminatedUnion('kind', [
    z.object({
      kind: z.literal('interval'),
      low: z.number(),
      high: z.number(),
      level: z.number().describe('0.95 for a 95 % interval.'),
      method: z.string(),
    }),
    z.object({ kind: z.literal('none'), reason: z.string() }),
  ])
  .describe('The interval, or the reason why none is given.');

const history = {
  unit: z.string().describe('percent, kilograms-per-square-metre, grams-per-log-year, ...'),
  n: z.object({ batches: z.int(), units: z.int(), runs: z.int(), sites: z.int() }),
  method: z.object({
    code: z.string(),
    source: z.string().describe('Published source of the method; empty for plain sums.'),
    clusteredBy: z.string(),
  }),
  marks: z.array(z.string()).describe('What a reader must know about the rows behind it.'),
  leftOut: z.array(z.object({ reason: z.string(), batches: z.int(), units: z.int() })),
  asOf: z.iso.datetime(),
  rowsQuery: z.string().describe('Query of the page /comparison/rows that lists the batches behind it.'),
};
const parts = z.object({ numerator: z.number(), denominator: z.number(), unit: z.string() });

/** A number with its history, as every page shows it. */
export const figureSchema = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('figure'), value: z.number(), interval, ...history, parts }),
  z.object({ kind: z.literal('counts'), reason: z.string(), ...history, parts }),
  z.object({ kind: z.literal('cannot'), reason: z.string(), ...history }),
]);

const row = z.object({
  method: z.string().optional().describe('Id of a method, mixed, second-life or none; absent: all.'),
  site: z.string().optional().describe('Id of a site; absent: all.'),
  contamination: figureSchema,
  contaminationAtAnyTime: figureSchema,
  lostOtherUnits: z.int().describe('Units lost for another cause, never counted as contamination.'),
  yield: figureSchema,
  yieldOfCropped: figureSchema,
  logLifeBe: figureSchema.optional(),
  laterGrams: z.int().describe('Weighed after the day to which the yield runs.'),
});

export const comparisonSchema = z.object({
  filter: z.object({
    from: z.iso.date(),
    to: z.iso.date(),
    species: z.string(),
    container: z.string(),
    material: z.string(),
    method: z.string().optional(),
    site: z.string().optional(),
  }),
  page: z.int(),
  pages: z.int(),
  total: row,
  methods: z.array(row),
  sites: z.array(row).describe('The sites of this page.'),
  cells: z.array(row).describe('Each method at each site of this page.'),
});

/** A figure of growing, or why there is none. */
const cannot = z.object({
  kind: z.literal('cannot-compute'),
  reason: z.string(),
  values: z.record(z.string(), z.union([z.number(), z.string()])),
});
const answered = <S extends z.ZodType>(value: S) =>
  z.discriminatedUnion('kind', [z.object({ kind: z.literal('value'), value }), cannot]);

export const batchFiguresSchema = z.object({
  batchId: z.uuid(),
  units: z.record(z.string(), z.int()).describe('Units by what became of them.'),
  contamination: answered(
    z.object({
      kind: z.enum(['inspected', 'not-inspected', 'window-open']),
      windowEnd: z.iso.date(),
      contaminatedByWindowEnd: z.int().optional(),
      contaminatedAtAnyTime: z.int().optional(),
      inoculatedUnits: z.int().optional(),
      soFar: z.int().optional(),
    }),
  ),
  freshGrams: z.int(),
  weighings: z.int(),
  biologicalEfficiency: answered(z.object({ bePercent: z.number(), freshGrams: z.int(), dryGrams: z.int() })),
  flushes: z.array(z.object({ flush: z.int(), grams: z.int(), sharePercent: z.number() })),
});

const judged = z.object({
  lotId: z.uuid(),
  batches: z.int(),
  sites: z.int(),
  units: z.int(),
  observed: z.int().describe('Units found contaminated by the end of the window.'),
  expected: z.number().describe('What its sites and methods would have lost anyway.'),
  ratio: z.number(),
  low: z.number(),
  high: z.number(),
  falseDiscovery: z.number(),
  verdict: z.enum(['loses-more', 'as-expected']),
});

export const lotAnswersSchema = z.object({
  state: z
    .enum(['current', 'earlier', 'working'])
    .describe('earlier: from records that have changed since; working: ask again after Retry-After.'),
  fittedAt: z.iso.datetime().nullable(),
  answer: z
    .discriminatedUnion('kind', [
      z.object({ kind: z.literal('judged'), lots: z.array(judged), leftOut: z.int() }),
      z.object({ kind: z.literal('cannot'), reason: z.string() }),
    ])
    .nullable(),
});
