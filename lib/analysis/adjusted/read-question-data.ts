import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type ComparisonChoices, readComparisonChoices } from '../comparison/comparison-choices';
import type { ComparisonFilter } from '../comparison/comparison-filter.input';
import { type JudgedBatch, judgeBatches } from '../comparison/judged-batch';
import { readBatchRows } from '../comparison/read-batch-rows';
import { readDataVersion } from '../fitted/data-version';
import { type ModelBatch, modelBatches } from './model-batch';
import { type AskedQuestion, filterOfQuestion } from './question-scope.input';
import { readBatchLots } from './read-batch-lots';
import { readHemispheres } from './read-hemispheres';

export type QuestionScope = {
  readonly choices: ComparisonChoices;
  readonly filter: ComparisonFilter;
  readonly version: string;
};

export type QuestionData = QuestionScope & {
  readonly judged: readonly JudgedBatch[];
  readonly batches: readonly ModelBatch[];
  /** Instant at which the records were read. */
  readonly asOf: string;
};

/** What is asked about, without its batches; undefined while the network has none. `known` are its choices, where they were read. */
export async function readQuestionScope(
  context: ReadContext,
  asked: AskedQuestion,
  now: Date,
  known?: ComparisonChoices,
): Promise<QuestionScope | undefined> {
  const choices = known ?? (await readComparisonChoices(context, now));
  if (choices.defaults === undefined) return undefined;
  const version = await readDataVersion(context, choices.today);
  return { choices, filter: filterOfQuestion(asked, choices.defaults), version };
}

/** The batches asked about, judged as of `now`, with the lots they came from. */
export async function readQuestionData(
  context: ReadContext,
  scope: QuestionScope,
  now: Date,
): Promise<QuestionData> {
  const judged = judgeBatches(await readBatchRows(context, scope.filter), scope.choices.today);
  const lots = await readBatchLots(context, scope.filter);
  const batches = modelBatches(judged, lots, await readHemispheres(context));
  return { ...scope, judged, batches, asOf: now.toISOString() };
}
