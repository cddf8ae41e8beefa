import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type Comparison, compare } from './compare';
import { type ComparisonChoices, readComparisonChoices } from './comparison-choices';
import { type ComparisonFilter, completeFilter, parseComparisonQuery } from './comparison-filter.input';
import { judgeBatches } from './judged-batch';
import { readBatchRows } from './read-batch-rows';

type Query = Record<string, string | string[] | undefined>;

type WholeComparison = {
  readonly choices: ComparisonChoices;
  readonly filter: ComparisonFilter;
  readonly comparison: Comparison;
};

/**
 * The comparison that an address asks for with every site, as of `now`, for files; undefined while the network has no
 * batch. Reads every batch: a page shows `readComparisonPage`.
 */
export async function readComparison(
  context: ReadContext,
  query: Query,
  now: Date,
): Promise<WholeComparison | undefined> {
  const choices = await readComparisonChoices(context, now);
  if (choices.defaults === undefined) return undefined;
  const filter = completeFilter(parseComparisonQuery(query), choices.defaults);
  const facts = await readBatchRows(context, filter);
  return {
    choices,
    filter,
    comparison: compare(judgeBatches(facts, choices.today), filter, now.toISOString()),
  };
}
