import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import type { TreatedIn } from '../comparison/cluster-of-run';
import { noApartNames } from './apart-batches';
import { type ApartClusters, apartClusters } from './apart-clusters';
import { type ApartOfQuestion, apartWithin } from './apart-of-question';
import type { BesideSums } from './beside-sums';
import type { OutcomeSums } from './outcome-sums';
import type { OutcomesWanted } from './outcomes-wanted';
import { readApartRuns } from './read-apart-runs';
import { readFineSums } from './read-fine-sums';
import { readPeriod } from './read-period';
import { readSiteSums, type SitesRead } from './read-site-sums';
import { sumsOfSites } from './sums-of-sites';

/** Everything that rows over all sites are made of. */
export type WholeSums = {
  readonly sums: OutcomeSums;
  readonly apart: ApartClusters;
  /** Batches of several runs, which say what clusters the batches of some sites belong to. */
  readonly joining: readonly TreatedIn[];
};

const nothing: OutcomeSums = { counted: [], amounts: [], marked: [], leftOut: [], sites: [] };

type Apart = Pick<WholeSums, 'apart' | 'joining'>;

/** What is said of runs, of any method: clusters are joined by batches of any. */
export function apartOf(asked: ApartOfQuestion): Apart {
  const within = apartWithin(asked);
  return { apart: apartClusters(within), joining: within.joining };
}

/** The same, out of what sums cannot tell. */
export function apartBeside(beside: BesideSums, wanted: OutcomesWanted, today: SiteDates): Apart {
  return apartOf({ sites: apartSites(beside), names: beside.names, wanted, today });
}

function* apartSites({ sites }: BesideSums) {
  for (const [site, { apart }] of sites) yield [site, apart] as const;
}

/** The whole of every method, or of one. */
export function wholeOf({ sums }: SitesRead, apart: Apart, method: string | undefined): WholeSums {
  return { sums: sumsOfSites(sums.sites, sums.network, method), ...apart };
}

/** The sums within the filter as of today, read anew. */
export async function readWholeSums(
  context: ReadContext,
  wanted: OutcomesWanted,
  today: SiteDates,
): Promise<WholeSums> {
  const period = await readPeriod(context, wanted);
  if (period === undefined || today.size === 0)
    return {
      sums: nothing,
      ...apartOf({ sites: [], names: noApartNames(), wanted, today }),
    };
  // Sums of the whole network are its coordinators' alone; a member's own sites have few.
  if (context.actor.role === 'coordinator') {
    const read = await readSiteSums(context, wanted, period, today, {});
    return wholeOf(read, apartBeside(read.beside, wanted, today), wanted.method);
  }
  const sums = await readFineSums(context, wanted, period, today);
  return { sums, ...apartOf(await readApartRuns(context, wanted, period, today)) };
}
