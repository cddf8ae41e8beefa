import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import { type ApartCell, apartOfSites, apartText, apartWithin } from './apart-batches';
import { epochDaysAt } from './days-at-sites';
import type { OutcomesWanted } from './outcomes-wanted';

/** What is apart of one question: by site, with how many runs there are numbers for. */
export type ApartOfQuestion = {
  readonly sites: ReadonlyMap<string, readonly ApartCell[]>;
  readonly numbers: ReadonlyMap<string, number>;
};

/** The batches within the filter, of any method, whose clusters cannot be counted from sums, read anew. */
export async function readApartRuns(
  context: ReadContext,
  wanted: OutcomesWanted,
  today: SiteDates,
): Promise<ApartOfQuestion> {
  const { container, from } = wanted;
  const [answer] = await context.db.$queryRaw<{ apart: string | null }[]>`
    select ${apartText(context, { container, from, held: undefined })} as apart`;
  const numbers = new Map<string, number>();
  const sites = new Map<string, readonly ApartCell[]>();
  const [within, dayAt] = [apartWithin(wanted), epochDaysAt(today)];
  for (const [site, apart] of apartOfSites(answer?.apart ?? null, numbers)) {
    const day = dayAt(site);
    if (day !== undefined) sites.set(site, within(apart, day));
  }
  return { numbers, sites };
}
