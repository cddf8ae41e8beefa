import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { apartClusters } from '../outcomes/apart-clusters';
import { readApartRuns } from '../outcomes/read-apart-runs';
import { readOutcomeSums } from '../outcomes/read-outcome-sums';
import { rowOfSums, rowsOfMethods } from '../outcomes/rows-of-sums';
import type { SiteDates } from './batch-facts';
import { clusterOfRun } from './cluster-of-run';
import { type Comparison, compareAtSites } from './compare';
import type { ComparisonFilter } from './comparison-filter.input';
import { judgeBatches } from './judged-batch';
import { readBatchRows } from './read-batch-rows';

export type ComparisonTotals = Pick<Comparison, 'total' | 'methods'> & {
  /** Sites with any batch that the filter chooses. */
  readonly sites: ReadonlySet<string>;
  /** Rows of some of the sites, from their batches, which are read one by one. */
  readonly rowsOfSites: (sites: readonly string[]) => Promise<Pick<Comparison, 'sites' | 'cells'>>;
};

/** The rows over all sites that a filter chooses, out of kept sums: none of them grows with the number of batches. */
export async function readComparisonTotals(
  context: ReadContext,
  filter: ComparisonFilter,
  today: SiteDates,
  asOf: string,
): Promise<ComparisonTotals> {
  const sums = await readOutcomeSums(context, filter, today);
  const runs = await readApartRuns(context, filter, today);
  const whole = { sums, apart: apartClusters(runs, clusterOfRun(runs.joined)), today };
  // A batch of one run tells nothing of which runs belong together.
  const joining = runs.joined.filter(({ runIds }) => runIds.length > 1);
  return {
    sites: new Set(sums.sites),
    total: rowOfSums({ ...sums, apart: whole.apart, today }, filter, filter.method, asOf),
    methods: rowsOfMethods(whole, filter, asOf),
    rowsOfSites: async (sites) => {
      const facts = await readBatchRows(context, { ...filter, sites });
      return compareAtSites(judgeBatches(facts, today, clusterOfRun([...facts, ...joining])), filter, asOf);
    },
  };
}
