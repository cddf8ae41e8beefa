import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from './batch-facts';
import { clusterOfRun, type RunMember } from './cluster-of-run';
import { type Comparison, compareAtSites } from './compare';
import type { ComparisonFilter } from './comparison-filter.input';
import { judgeBatches } from './judged-batch';
import { readBatchRows } from './read-batch-rows';

/**
 * The rows of some sites and of each method there, from their batches, which are read one by one. `joining` are the
 * batches of several runs at any site, which may join those of these sites.
 */
export async function readSiteRows(
  context: ReadContext,
  filter: ComparisonFilter,
  sites: readonly string[],
  joining: readonly RunMember[],
  about: { readonly today: SiteDates; readonly asOf: string },
): Promise<Pick<Comparison, 'sites' | 'cells'>> {
  const facts = await readBatchRows(context, { ...filter, sites });
  const clusters = clusterOfRun([...facts, ...joining]);
  return compareAtSites(judgeBatches(facts, about.today, clusters), filter, about.asOf);
}
