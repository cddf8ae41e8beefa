import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { readJoiningRuns } from '../outcomes/read-joining-runs';
import { readWholeSums } from '../outcomes/read-whole-sums';
import { rowOfSums, rowsOfMethods } from '../outcomes/rows-of-sums';
import { clusterOfRun } from './cluster-of-run';
import { type ComparedRow, type Comparison, compare } from './compare';
import { type ComparisonChoices, readComparisonChoices } from './comparison-choices';
import { type ComparisonFilter, completeFilter, parseComparisonQuery } from './comparison-filter.input';
import { judgeBatches } from './judged-batch';
import { readBatchRows } from './read-batch-rows';
import { readSiteRows } from './read-site-rows';

type Query = Record<string, string | string[] | undefined>;

export type WholeComparison = {
  readonly choices: ComparisonChoices;
  readonly filter: ComparisonFilter;
  readonly comparison: Comparison;
};

/** The batches of so many sites are in memory at a time. */
const sitesAtOnce = 25;

/**
 * The comparison that an address asks for with every site, as of `now`, for files; undefined while the network has no
 * batch. Rows of all sites come from kept sums, those of each site from its batches, some sites at a time: memory grows
 * with the rows of the file and not with the batches. Ask within a snapshot, so that no write comes between.
 */
export async function readComparison(
  context: ReadContext,
  query: Query,
  now: Date,
): Promise<WholeComparison | undefined> {
  const choices = await readComparisonChoices(context, now);
  if (choices.defaults === undefined) return undefined;
  const filter = completeFilter(parseComparisonQuery(query), choices.defaults);
  const { today } = choices;
  const asOf = now.toISOString();
  if (filter.site !== undefined) {
    const facts = await readBatchRows(context, { ...filter, sites: [filter.site] });
    const clusters = clusterOfRun([...facts, ...(await readJoiningRuns(context, filter))]);
    return { choices, filter, comparison: compare(judgeBatches(facts, today, clusters), filter, asOf) };
  }
  const { sums, apart, joining } = await readWholeSums(context, filter, today);
  const [sites, cells]: [ComparedRow[], ComparedRow[]] = [[], []];
  for (let at = 0; at < sums.sites.length; at += sitesAtOnce) {
    const some = sums.sites.slice(at, at + sitesAtOnce);
    const own = await readSiteRows(context, filter, some, joining, { today, asOf });
    sites.push(...own.sites);
    cells.push(...own.cells);
  }
  const total = rowOfSums({ ...sums, apart, today }, filter, filter.method, asOf);
  const methods = rowsOfMethods({ sums, apart, today }, filter, asOf);
  return { choices, filter, comparison: { total, methods, sites, cells } };
}
