import 'server-only';
import { setImmediate } from 'node:timers/promises';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import type { RunMember } from '../comparison/cluster-of-run';
import { type ApartClusters, apartClusters } from './apart-clusters';
import type { SiteSums } from './near-batches';
import type { OutcomeSums } from './outcome-sums';
import type { OutcomesWanted } from './outcomes-wanted';
import { type ApartCell, type ApartOfSites, readApartRuns } from './read-apart-runs';
import { readFineSums } from './read-fine-sums';
import { readPeriod } from './read-period';
import { readSiteSums, type SumsOfSites } from './read-site-sums';
import type { SplitPeriod } from './split-period';
import { sumsOfSites } from './sums-of-sites';

/** Everything that rows over all sites are made of. */
export type WholeSums = {
  readonly sums: OutcomeSums;
  readonly apart: ApartClusters;
  /** Batches of several runs, which say what clusters the batches of some sites belong to. */
  readonly joining: readonly RunMember[];
};

const nothing: OutcomeSums = { counted: [], amounts: [], marked: [], leftOut: [], sites: [] };

/** What is read of each site. */
export type SitesRead = { readonly sums: SumsOfSites; readonly apart: ApartOfSites };

type Apart = Pick<WholeSums, 'apart' | 'joining'>;

/** What is said of runs, of any method: clusters are joined by batches of any. */
export function apartOf(read: ApartOfSites): Apart {
  const joining = [...read.sites.values()].flatMap((cells) => cells.flatMap((cell) => cell.joining));
  return {
    apart: apartClusters(read),
    joining: joining.map(({ runIds }, index) => ({ id: `apart ${index}`, runIds })),
  };
}

/** The whole of every method, or of one. */
export function wholeOf({ sums }: SitesRead, apart: Apart, method: string | undefined): WholeSums {
  return { sums: sumsOfSites(sums.sites, sums.network, method), ...apart };
}

/**
 * What of each site is remembered, with the sites written since read anew. Two statements: each tells the state it saw,
 * and the next reader asks each for what came after.
 */
export async function readSites(
  context: ReadContext,
  wanted: OutcomesWanted,
  period: SplitPeriod,
  today: SiteDates,
  before?: SitesRead,
): Promise<SitesRead> {
  const sumsRead = await readSiteSums(context, wanted, period, today, before?.sums.version);
  // The second statement leaves for the database before the answer of the first is added up here.
  const [apart, sums] = await Promise.all([
    readApartRuns(context, wanted, today, before?.apart),
    setImmediate().then(sumsRead),
  ]);
  if (before === undefined) return { sums, apart };
  return {
    sums: { ...sums, sites: laidOver<SiteSums>(before.sums.sites, sums) },
    apart: { ...apart, sites: laidOver<readonly ApartCell[]>(before.apart.sites, apart) },
  };
}

function laidOver<Own>(
  before: ReadonlyMap<string, Own>,
  read: { readonly written: readonly string[]; readonly sites: ReadonlyMap<string, Own> },
): ReadonlyMap<string, Own> {
  const sites = new Map(before);
  for (const site of read.written) sites.delete(site);
  for (const [site, own] of read.sites) sites.set(site, own);
  return sites;
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
      ...apartOf({ sites: new Map(), numbers: new Map(), version: undefined, written: [] }),
    };
  // Sums of the whole network are its coordinators' alone; a member's own sites have few.
  if (context.actor.role === 'coordinator') {
    const read = await readSites(context, wanted, period, today);
    return wholeOf(read, apartOf(read.apart), wanted.method);
  }
  const sums = await readFineSums(context, wanted, period, today);
  return { sums, ...apartOf(await readApartRuns(context, wanted, today)) };
}
