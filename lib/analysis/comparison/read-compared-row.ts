import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { readJoiningRuns } from '../outcomes/read-joining-runs';
import { rowOfWhole } from '../outcomes/remembered-rows';
import { rememberedWholeSums } from '../outcomes/remembered-sums';
import type { SiteDates } from './batch-facts';
import { clusterOfRun } from './cluster-of-run';
import { type ComparedRow, compareOne } from './compare';
import type { ComparisonFilter } from './comparison-filter.input';
import { judgeBatches } from './judged-batch';
import { readBatchRows } from './read-batch-rows';

/**
 * The row of everything that a filter chooses, as of `now`: of one site from its batches, which cluster by treatment run,
 * of several from kept sums.
 */
export async function readComparedRow(
  context: ReadContext,
  filter: ComparisonFilter,
  today: SiteDates,
  now: Date,
): Promise<ComparedRow> {
  const asOf = now.toISOString();
  if (filter.site === undefined) {
    const whole = await rememberedWholeSums(context, filter, today);
    return rowOfWhole(whole, { filter, today, asOf });
  }
  const facts = await readBatchRows(context, { ...filter, sites: [filter.site] });
  const joining = await readJoiningRuns(context, filter);
  return compareOne(judgeBatches(facts, today, clusterOfRun([...facts, ...joining])), filter, asOf);
}
