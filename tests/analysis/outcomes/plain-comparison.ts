import type { ReadContext } from '@/lib/access/context';
import { type Comparison, compare } from '@/lib/analysis/comparison/compare';
import { readComparisonChoices } from '@/lib/analysis/comparison/comparison-choices';
import { completeFilter, parseComparisonQuery } from '@/lib/analysis/comparison/comparison-filter.input';
import { judgeBatches } from '@/lib/analysis/comparison/judged-batch';
import { readBatchRows } from '@/lib/analysis/comparison/read-batch-rows';

/** The comparison added up batch by batch, all of them at once, by which every quicker way is held. */
export async function plainComparison(
  context: ReadContext,
  query: Record<string, string>,
  now: Date,
): Promise<Comparison | undefined> {
  const choices = await readComparisonChoices(context, now);
  if (choices.defaults === undefined) return undefined;
  const filter = completeFilter(parseComparisonQuery(query), choices.defaults);
  const facts = await readBatchRows(context, filter);
  return compare(judgeBatches(facts, choices.today), filter, now.toISOString());
}
