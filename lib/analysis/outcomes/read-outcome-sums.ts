import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import type { OutcomeSums } from './outcome-sums';
import { type OutcomesWanted, outcomeBounds } from './outcomes-wanted';
import { readFineSums } from './read-fine-sums';
import { readSumsOfTotals } from './read-sums-of-totals';
import { splitPeriod } from './split-period';

type Held = { from: string | null; to: string | null };

const nothing: OutcomeSums = { counted: [], amounts: [], marked: [], leftOut: [], sites: [] };

/**
 * Adds up everything within the filter from kept sums of whole years and quarters, and batch by batch only at the
 * period's ends. The kept sums hold each batch as if its day had come; those whose day lies ahead at their site are
 * taken off again and counted as too young, so that a batch enters as the clock moves and nothing is written. Who sees
 * the whole network and asks for no material is answered from the coarser totals, which give the same.
 */
export async function readOutcomeSums(
  context: ReadContext,
  wanted: OutcomesWanted,
  today: SiteDates,
): Promise<OutcomeSums> {
  const { from, to, container, material } = outcomeBounds(wanted);
  // The sums of thousands of sites are grouped in memory, not on disk.
  const [held] = await context.db.$queryRaw<Held[]>`
    select set_config('work_mem', '64MB', true), min(inoculated_on)::text as from, max(inoculated_on)::text as to from batch_outcome
    where network_id = ${context.actor.networkId}::uuid and container = ${container}`;
  if (!held?.from || !held.to || today.size === 0) return nothing;
  const period = splitPeriod({ from, to }, { from: held.from, to: held.to });
  const whole = context.actor.role === 'coordinator' && material === null;
  return (whole ? readSumsOfTotals : readFineSums)(context, wanted, period, today);
}
