import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { readRuns, readWindows } from './read-runs';
import { type ShortMethod, shortMethods } from './short-methods';

/** The methods that a site's own runs begun in the period mostly did not hold; of that site alone, whoever reads. */
export async function readShortMethods(
  context: ReadContext,
  siteId: string,
  period: { readonly from: string; readonly to: string },
  now: Date,
): Promise<readonly ShortMethod[]> {
  const runs = await readRuns(context, period, now, siteId);
  const begun = runs.filter(({ startedOn }) => startedOn >= period.from && startedOn <= period.to);
  return begun.length === 0 ? [] : shortMethods(begun, await readWindows(context));
}
