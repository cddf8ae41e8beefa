import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import type { TreatedIn } from '../comparison/cluster-of-run';
import { apartWithin } from './apart-batches';
import { type ApartClusters, apartClusters } from './apart-clusters';
import { epochDaysAt } from './days-at-sites';
import type { OutcomeSums } from './outcome-sums';
import type { OutcomesWanted } from './outcomes-wanted';
import { type ApartOfQuestion, readApartRuns } from './read-apart-runs';
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
export function apartOf(read: ApartOfQuestion): Apart {
  const joining = [...read.sites.values()].flatMap((cells) => cells.flatMap((cell) => cell.joining));
  return { apart: apartClusters(read), joining };
}

/** What is apart of a question, out of what sums cannot tell; of sites that were not written it is as before. */
export function apartIn(
  { sums, beside }: SitesRead,
  wanted: OutcomesWanted,
  today: SiteDates,
  before?: ApartOfQuestion,
): ApartOfQuestion {
  // The number of a run means something only in the map that gave it.
  const held = before?.numbers === beside.numbers ? before : undefined;
  const sites = new Map(held?.sites);
  const [within, dayAt] = [apartWithin(wanted), epochDaysAt(today)];
  for (const site of held === undefined ? beside.sites.keys() : sums.written) {
    const [apart, day] = [beside.sites.get(site)?.apart, dayAt(site)];
    if (apart === undefined || day === undefined) sites.delete(site);
    else sites.set(site, within(apart, day));
  }
  return { numbers: beside.numbers, sites };
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
      ...apartOf({ sites: new Map(), numbers: new Map() }),
    };
  // Sums of the whole network are its coordinators' alone; a member's own sites have few.
  if (context.actor.role === 'coordinator') {
    const read = await readSiteSums(context, wanted, period, today, {});
    return wholeOf(read, apartOf(apartIn(read, wanted, today)), wanted.method);
  }
  const sums = await readFineSums(context, wanted, period, today);
  return { sums, ...apartOf(await readApartRuns(context, wanted, today)) };
}
