import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { readSiteBatches } from '../outcomes/read-site-batches';
import { rowsAtSites } from '../outcomes/rows-at-sites';
import type { SiteDates } from './batch-facts';
import type { TreatedIn } from './cluster-of-run';
import type { Comparison } from './compare';
import type { ComparisonFilter } from './comparison-filter.input';

/**
 * The rows of some sites and of each method there, from their batches. `joining` are the batches of several runs at any
 * site, which may join those of these sites.
 */
export async function readSiteRows(
  context: ReadContext,
  filter: ComparisonFilter,
  sites: readonly string[],
  joining: readonly TreatedIn[],
  about: { readonly today: SiteDates; readonly asOf: string },
): Promise<Pick<Comparison, 'sites' | 'cells'>> {
  return rowsAtSites(await readSiteBatches(context, filter, sites), joining, filter, about);
}
