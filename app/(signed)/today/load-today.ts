import { z } from 'zod';
import type { ReadContext } from '@/lib/access/context';
import { getSite } from '@/lib/records/site/get-site.query';
import { countOpen, type OpenAtSite, type OpenCounts } from '@/lib/records/today/count-open.query';
import type { DueLine } from '@/lib/records/today/due-line';
import { listDue } from '@/lib/records/today/list-due.query';

type Today = {
  /** What is due, of the chosen site only where there are too many batches for all sites at once. */
  readonly due: readonly DueLine[];
  readonly chosen: string | undefined;
  /** Where there are too many batches for all sites at once: what is open where. */
  readonly counts: OpenCounts | undefined;
  readonly at: OpenAtSite | undefined;
  /** Name of a site that was chosen there and has nothing open. */
  readonly idle: string | undefined;
};

/** What the page of the day shows: all that is due, or, for whoever sees to a thousand open batches, site by site. */
export async function loadToday(context: ReadContext, site: unknown, now: Date): Promise<Today> {
  const asked = z.uuid().safeParse(site).data;
  const counts = await openCounts(context, asked, now);
  if (counts === undefined) {
    const due = await listDue(context, now);
    const chosen = due.some(({ siteId }) => siteId === asked) ? asked : undefined;
    return { due, chosen, counts, at: undefined, idle: undefined };
  }
  const at = counts.sites.find(({ siteId }) => siteId === asked);
  const due = await listDue(context, now, at === undefined ? { runsOnly: true } : { siteId: at.siteId });
  const idle = at === undefined && asked !== undefined ? (await getSite(context, asked))?.name : undefined;
  return { due, chosen: at?.siteId, counts, at, idle };
}

/** Of a site that is asked for and has anything open its own counts are enough. */
async function openCounts(context: ReadContext, asked: string | undefined, now: Date) {
  if (asked === undefined) return countOpen(context, now);
  const own = await countOpen(context, now, { siteId: asked });
  return own === undefined || own.sites.length > 0 ? own : countOpen(context, now);
}
