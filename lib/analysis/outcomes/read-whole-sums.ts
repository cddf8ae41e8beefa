import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import { clusterOfRun, type RunMember } from '../comparison/cluster-of-run';
import { type ApartClusters, apartClusters } from './apart-clusters';
import type { OutcomeSums } from './outcome-sums';
import { type OutcomesWanted, outcomeBounds } from './outcomes-wanted';
import { readApartRuns } from './read-apart-runs';
import { readOutcomeSums } from './read-outcome-sums';

/** Everything that rows over all sites are made of. */
export type WholeSums = {
  readonly sums: OutcomeSums;
  readonly apart: ApartClusters;
  /** Batches of several runs, which say what clusters the batches of some sites belong to. */
  readonly joining: readonly RunMember[];
};

/** So many questions are remembered in a process, some two megabytes each in a network of a thousand sites. */
const most = 12;
const known = new Map<string, WholeSums>();

/**
 * How often what is kept of batches has been written, beside the day at the sites: the sums of two equal states are the
 * same. Read before the sums, so that a write in between leaves newer sums under an older state, which nobody asks for
 * any more, and never the other way round. Undefined where nothing was counted yet, or for who may no longer read it.
 */
async function readState({ db, actor }: ReadContext, today: SiteDates): Promise<string | undefined> {
  const row = await db.outcomeVersion.findUnique({ where: { networkId: actor.networkId } });
  return row === null ? undefined : [row.version, ...today].join(' ');
}

/** The sums within the filter as of today, read anew. */
export async function readWholeSums(
  context: ReadContext,
  wanted: OutcomesWanted,
  today: SiteDates,
): Promise<WholeSums> {
  const sums = await readOutcomeSums(context, wanted, today);
  const runs = await readApartRuns(context, wanted, today);
  const apart = apartClusters(runs, clusterOfRun(runs.joined));
  return { sums, apart, joining: runs.joined.filter(({ runIds }) => runIds.length > 1) };
}

/**
 * The same, remembered until the next write: a reader goes from the comparison to the batches behind a figure and back.
 * Only for who sees the whole network; what a member or a token may see is read each time.
 */
export async function rememberedWholeSums(
  context: ReadContext,
  wanted: OutcomesWanted,
  today: SiteDates,
): Promise<WholeSums> {
  const { actor } = context;
  if (actor.role !== 'coordinator' || actor.token !== undefined) return readWholeSums(context, wanted, today);
  const state = await readState(context, today);
  if (state === undefined) return readWholeSums(context, wanted, today);
  const key = [actor.networkId, JSON.stringify(outcomeBounds(wanted)), state].join(' ');
  const before = known.get(key);
  const sums = before ?? (await readWholeSums(context, wanted, today));
  // The one used last goes to the end; the first is the one unused for longest.
  known.delete(key);
  known.set(key, sums);
  const [oldest] = known.keys();
  if (known.size > most && oldest !== undefined) known.delete(oldest);
  return sums;
}
