import { z } from 'zod';
import { readAs } from '@/lib/access/scoped-db';
import { parseQuestion } from '@/lib/analysis/adjusted/question-scope.input';
import { readQuestionScope } from '@/lib/analysis/adjusted/read-question-data';
import { readComparisonPage } from '@/lib/analysis/comparison/read-comparison-page';
import { askLots } from '@/lib/analysis/lot-question/lots-question';
import { notFound, ok } from '@/lib/base/result';
import { containerKinds } from '@/lib/growing/vocabulary';
import { getBatch } from '@/lib/records/batch/get-batch.query';
import { batchFiguresSchema, comparisonSchema, lotAnswersSchema } from '../resource/figure';
import type { ReadOperation } from './operation';

const tag = 'figures';
const id = z.uuid();
const day = z.iso.date().refine((text) => text >= '1950-01-01' && text <= '2100-12-31', 'not-a-date');
const scope = {
  from: day.describe('Inoculated from this day on.').optional(),
  to: day.describe('Inoculated up to this day.').optional(),
  species: z.union([z.literal('all'), id]).optional(),
  container: z.enum(containerKinds).optional(),
  material: z.union([z.literal('all'), z.literal('mixed'), id]).optional(),
};
/** After so many seconds it is worth asking again whether a model has been fitted. */
const fitSeconds = 5;

const comparison: ReadOperation = {
  name: 'readComparison',
  method: 'GET',
  path: '/comparison',
  tag,
  summary: 'Read the comparison of methods and sites',
  about:
    'The figures of the page Comparison: each with n, interval, method and what was left out. Left-out parameters are as on the page. For coordinators whose token reaches all sites.',
  of: 'figures',
  area: 'comparison',
  query: z.strictObject({
    ...scope,
    method: z.union([z.enum(['mixed', 'second-life', 'none']), id]).optional(),
    site: id.optional(),
    page: z.coerce.number().int().min(1).optional(),
  }),
  answer: comparisonSchema,
  read: async (actor, { query, now }) => {
    if (actor.role !== 'coordinator') return notFound;
    const given = Object.fromEntries(
      Object.entries(query).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])),
    );
    const shown = await readAs(actor, (context) => readComparisonPage(context, given, now));
    if (!shown) return notFound;
    const { filter, page, pages } = shown;
    return ok({ status: 200, body: { filter, page, pages, ...shown.comparison } });
  },
};

const batchFigures: ReadOperation = {
  name: 'readBatchFigures',
  method: 'GET',
  path: '/batches/{id}/figures',
  tag,
  summary: 'Read the figures of a batch',
  about: 'Contamination, fresh mass and biological efficiency as its page shows them, or why there is none.',
  of: 'figures',
  area: 'batches',
  query: z.strictObject({}),
  answer: batchFiguresSchema,
  read: async (actor, { id: batchId, now }) => {
    const page = await readAs(actor, (context) => getBatch(context, batchId, now));
    if (!page) return notFound;
    const { units, contamination, freshGrams, weighings, be, flushes } = page.figures;
    const body = { batchId, units, contamination, freshGrams, weighings, biologicalEfficiency: be, flushes };
    return ok({ status: 200, body });
  },
};

const lotAnswers: ReadOperation = {
  name: 'readLotAnswers',
  method: 'GET',
  path: '/lot-answers',
  tag,
  summary: 'Read how each spawn lot does against what was to be expected',
  about:
    'The answer of the page about spawn lots. A model is fitted in the background: 202 with Retry-After until the first answer is there. For coordinators whose token reaches all sites.',
  of: 'figures',
  area: 'comparison',
  query: z.strictObject({ ...scope, level: z.enum(['none', 'material', 'season', 'both']).optional() }),
  answer: lotAnswersSchema,
  read: async (actor, { query, now }) => {
    if (actor.role !== 'coordinator') return notFound;
    const asked = parseQuestion({ ...query });
    const known = await readAs(actor, (context) => readQuestionScope(context, asked, now));
    if (!known) return notFound;
    const answer = await askLots(actor, asked, known, now);
    // Whoever asks again finds the failure; a promise that nobody waits for would end the process.
    if (answer.kind !== 'current') answer.next.catch(() => undefined);
    if (answer.kind === 'first') {
      const body = { state: 'working', fittedAt: null, answer: null };
      return ok({ status: 202, body, retryAfterSeconds: fitSeconds });
    }
    const { result, fittedAt } = answer.stored;
    return ok({ status: 200, body: { state: answer.kind, fittedAt, answer: result } });
  },
};

export const figureOperations: readonly ReadOperation[] = [comparison, batchFigures, lotAnswers];
