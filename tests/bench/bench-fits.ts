import { mkdtempSync, rmSync } from 'node:fs';
import { cpus, loadavg, tmpdir } from 'node:os';
import path from 'node:path';
import { build } from 'esbuild';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { parseQuestion } from '@/lib/analysis/adjusted/question-scope.input';
import { readQuestionScope } from '@/lib/analysis/adjusted/read-question-data';
import type { FittedQuestion } from '@/lib/analysis/fitted/fitted-answer';
import { readForFit } from '@/lib/analysis/fitted/work-out';
import { runFit } from '@/lib/analysis/fitting/run-fit';
import { type Starts, warmFit } from '@/lib/analysis/fitting/warm-fit';
import { lossesQuestion } from '@/lib/analysis/loss-question/losses-question';
import { methodsQuestion } from '@/lib/analysis/method-question/methods-question';
import { everySiteNext } from '@/lib/analysis/next-question/next-question';
import { sitesQuestion } from '@/lib/analysis/site-question/sites-question';
import { disconnect } from '@/lib/database/client';
import { factorDense } from '@/lib/stats/mixed/linear-algebra/dense-cholesky';
import { coordinatorOf } from './coordinator-of';
import { type Lap, lapPrinter } from './lap-printer';

/** The questions that can be measured, each with models of its own. */
const questionNames = ['methods', 'sites', 'losses', 'next'] as const;
type QuestionName = (typeof questionNames)[number];
type Asked = { readonly email: string; readonly from: string | undefined; readonly question: QuestionName };

/** The question of a name; undefined where there is none. */
export function fittedQuestion(name: string): QuestionName | undefined {
  return questionNames.find((one) => one === name);
}

/** What all questions are worked out from, among other things. */
type WithBatches = { readonly batches: readonly unknown[] };

/** Seconds until the answer is there, by batches of the network, and megabytes of the process. */
const barOf = (batches: number) => (batches <= 150_000 ? 10 : 120);
const mostMegabytes = 2_000;

/**
 * One refit of a question, as the product runs it, in stages: reading, then each model in its thread. First
 * as if never fitted and without each hundredth batch, then with all batches from where that ended. True when the second
 * keeps within the bars.
 */
export async function benchFits({ question, ...asked }: Asked): Promise<boolean> {
  if (question === 'sites') return benchQuestion(asked, (_, ...of) => sitesQuestion(...of));
  if (question === 'losses') return benchQuestion(asked, (_, ...of) => lossesQuestion(...of));
  if (question === 'next') return benchQuestion(asked, everySiteNext);
  return benchQuestion(asked, (_, ...of) => methodsQuestion(...of));
}

type QuestionOf<Data extends WithBatches, Answer> = (
  actor: Actor,
  ...asked: Parameters<typeof methodsQuestion>
) => FittedQuestion<Data, Answer>;

async function benchQuestion<Data extends WithBatches, Answer>(
  { email, from }: Omit<Asked, 'question'>,
  questionOf: QuestionOf<Data, Answer>,
): Promise<boolean> {
  const folder = mkdtempSync(path.join(tmpdir(), 'fits-'));
  try {
    process.env.PINSET_FIT_WORKER = await bundledWorker(folder);
    const actor = await coordinatorOf(email);
    const asked = parseQuestion(from === undefined ? {} : { from });
    const now = new Date();
    const found = await readAs(actor, async (context) => ({
      scope: await readQuestionScope(context, asked, now),
      size: await context.db.$queryRaw<{ batches: number; sites: number }[]>`select
        (select count(*)::int from batch) as batches, (select count(*)::int from site) as sites`,
    }));
    const size = found.size[0];
    if (!found.scope || !size) throw new Error(`the network of ${email} has no batches`);
    const question = questionOf(actor, asked, found.scope, now);
    const { from: first, to } = found.scope.filter;
    console.log(
      `${size.batches} batches at ${size.sites} sites, asked about ${first} to ${to}; load ` +
        `${loadavg()
          .map((load) => load.toFixed(1))
          .join(' ')} on ${cpus().length} processors`,
    );
    const lap = lapPrinter();
    yardstick();
    await lap('yardstick: a dense factor of 1,500 rows', async () => yardstick());
    const reading = await lap('reading and judging', () => readForFit(actor, question));
    const { data } = reading.value;
    console.log(`  ${data.batches.length} batches take part`);
    const part: Data = { ...data, batches: data.batches.filter((_, row) => row % 100 !== 0) };
    console.log('never fitted before, without each hundredth batch');
    const cold = await answer(question, part, {}, lap);
    console.log('from there, with all batches');
    const warm = await answer(question, data, cold.starts, lap);
    const bar = barOf(size.batches);
    const verdict = (name: string, { clock, processor }: { clock: number; processor: number }) => {
      const [seconds, busy] = [reading.clock + clock, reading.processor + processor];
      const words = seconds <= bar ? 'within' : busy <= bar ? 'ABOVE by the clock' : 'ABOVE';
      console.log(`${name}: ${seconds.toFixed(1)} s (processor ${busy.toFixed(1)} s) of ${bar} s, ${words}`);
      return seconds <= bar;
    };
    verdict('cold, all in all', cold);
    const within = verdict('warm, all in all', warm);
    const megabytes = process.resourceUsage().maxRSS / 1024;
    console.log(`at most ${megabytes.toFixed(0)} MB of ${mostMegabytes} MB`);
    return within && megabytes <= mostMegabytes;
  } finally {
    rmSync(folder, { recursive: true });
    await disconnect();
  }
}

async function answer<Data, Answer>(
  question: FittedQuestion<Data, Answer>,
  data: Data,
  earlier: Starts,
  lap: Lap,
) {
  const models: string[] = [];
  const { fit, starts } = warmFit(async (request) => {
    const name = `  ${models.push(request.kind)}. ${request.kind} model`;
    const { value } = await lap(name, () => runFit(request));
    if (value.kind === 'answer') {
      const { evaluations, minusTwoLogLikelihood } = value.fit;
      console.log(`     ${evaluations} evaluations, -2 log L ${minusTwoLogLikelihood.toFixed(3)}`);
    }
    return value;
  }, earlier);
  const { clock, processor } = await lap('  all models and what follows from them', () =>
    question.work(data, fit),
  );
  return { clock, processor, starts };
}

/** The thread's code in one file, as the built application has it: from source it would be compiled at each start. */
async function bundledWorker(folder: string): Promise<string> {
  const outfile = path.join(folder, 'fit-worker.mjs');
  const entryPoints = ['lib/analysis/fitting/fit-worker.ts'];
  await build({ entryPoints, bundle: true, platform: 'node', format: 'esm', outfile, logLevel: 'error' });
  return outfile;
}

/** The kind of work that a fit of many crossed lots and sites mostly does. */
function yardstick(): void {
  const size = 1_500;
  const matrix = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j <= i; j += 1) matrix[i * size + j] = i === j ? size : Math.sin(i * j);
  }
  factorDense(matrix, 0, size);
}
