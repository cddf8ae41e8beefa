import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { urgencies } from '@/lib/growing/due/urgency';
import { batchLines } from './batch-lines';
import type { DueLine } from './due-line';
import { runLines } from './run-lines';
import { tendedSites } from './tended-sites';

const rank = (line: DueLine) => urgencies.indexOf(line.urgency);

/** By which lines of one urgency are ordered: the instant or day on which they are due, or begin to be. */
function order({ of, due, urgency }: DueLine): string {
  if (of === 'run') return due.at.toISOString();
  return urgency === 'soon' ? due.from : due.to;
}

/** At one site only; only the treatment runs, where there are too many batches to look through at once. */
export type DueWanted = { readonly siteId?: string | undefined; readonly runsOnly?: boolean };

/**
 * What is due at the actor's sites, soonest first: clocks that run, what is overdue, what has come today, what comes
 * within a week, and what keeps to the seasons. Worked out from the records, each method's window, the days that the
 * network expects of a species and container, and the site's own history; in a number of queries that does not grow.
 */
export async function listDue(context: ReadContext, now: Date, wanted: DueWanted = {}): Promise<DueLine[]> {
  const sites = tendedSites(context.actor, wanted.siteId);
  const lines: DueLine[] = await runLines(context, now, sites);
  if (!wanted.runsOnly) lines.push(...(await batchLines(context, now, sites)));
  return lines.sort(
    (a, b) => rank(a) - rank(b) || order(a).localeCompare(order(b)) || a.code.localeCompare(b.code),
  );
}
