import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { readRun } from './read-run';

/** A run to change: not voided, at a site that the actor can see, with that site, its method and readings. */
export async function openRun({ db }: ReadContext, id: string) {
  const run = await readRun(db, id);
  const site = run && (await db.site.findFirst({ where: { id: run.siteId } }));
  return run && site ? { ...run, site } : undefined;
}
