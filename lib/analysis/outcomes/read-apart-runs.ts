import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { SiteDates } from '../comparison/batch-facts';
import { apartOfSites, apartText, noApartNames } from './apart-batches';
import type { ApartOfQuestion } from './apart-of-question';
import type { OutcomesWanted } from './outcomes-wanted';
import { quartersOf, stretchesOf } from './quarters-held';
import type { SplitPeriod } from './split-period';

/** The batches within the filter, of any method, whose clusters cannot be counted from sums, read anew. */
export async function readApartRuns(
  context: ReadContext,
  wanted: OutcomesWanted,
  period: SplitPeriod,
  today: SiteDates,
): Promise<ApartOfQuestion> {
  const { container } = wanted;
  const missing = stretchesOf(quartersOf(period));
  const [answer] = await context.db.$queryRaw<{ apart: string | null }[]>`
    select ${apartText(context, { container, missing, held: undefined })} as apart`;
  const names = noApartNames();
  return { names, wanted, today, sites: apartOfSites(answer?.apart ?? null, names) };
}
