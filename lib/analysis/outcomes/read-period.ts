import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type OutcomesWanted, outcomeBounds } from './outcomes-wanted';
import { type SplitPeriod, splitPeriod } from './split-period';

type Held = { from: string | null; to: string | null };

/** The period within the filter as kept sums have it; undefined where there is no batch. */
export async function readPeriod(
  { db, actor }: ReadContext,
  wanted: OutcomesWanted,
): Promise<SplitPeriod | undefined> {
  const { from, to, container } = outcomeBounds(wanted);
  // The sums of thousands of sites are grouped in memory, not on disk.
  const [held] = await db.$queryRaw<Held[]>`
    select set_config('work_mem', '64MB', true), min(inoculated_on)::text as from, max(inoculated_on)::text as to from batch_outcome
    where network_id = ${actor.networkId}::uuid and container = ${container}`;
  return held?.from && held.to ? splitPeriod({ from, to }, { from: held.from, to: held.to }) : undefined;
}
