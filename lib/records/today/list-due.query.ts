import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { urgencies } from '@/lib/growing/due/urgency';
import { batchLines } from './batch-lines';
import type { DueLine } from './due-line';
import { runLines } from './run-lines';

const rank = (line: DueLine) => urgencies.indexOf(line.urgency);

/** By which lines of one urgency are ordered: the instant or day on which they are due, or begin to be. */
function order({ of, due, urgency }: DueLine): string {
  if (of === 'run') return due.at.toISOString();
  return urgency === 'soon' ? due.from : due.to;
}

/**
 * What is due at the actor's sites, soonest first: clocks that run, what is overdue, what has come today, what comes
 * within a week, and what keeps to the seasons. Worked out from the records, each method's window, the days that the
 * network expects of a species and container, and the site's own history; in a number of queries that does not grow.
 */
export async function listDue(context: ReadContext, now: Date): Promise<DueLine[]> {
  const lines: DueLine[] = [...(await runLines(context, now)), ...(await batchLines(context, now))];
  return lines.sort(
    (a, b) => rank(a) - rank(b) || order(a).localeCompare(order(b)) || a.code.localeCompare(b.code),
  );
}
