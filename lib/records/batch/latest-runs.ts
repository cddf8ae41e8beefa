import type { ReadContext } from '@/lib/access/context';
import { ofSiteFirst } from '../site/of-site-first';
import { runsAtSites } from '../treatment/runs-at-sites';
import { runsInSight } from '../treatment/runs-in-sight';

const most = 60;

/** The runs that a batch can be made of, latest first; where a site is given, those that it can draw on before the others. */
export async function latestRuns(context: ReadContext, at: string | undefined) {
  const { db } = context;
  const latest = {
    include: { method: true },
    orderBy: [{ startedAt: 'desc' as const }, { id: 'desc' as const }],
    take: most,
  };
  const seen = { AND: [{ voidedAt: null }, await runsInSight(context)] };
  const all = await db.treatmentRun.findMany({ where: seen, ...latest });
  if (at === undefined) return all;
  const usable = await runsAtSites(context, [at]);
  const there = await db.treatmentRun.findMany({ where: { AND: [seen, usable] }, ...latest });
  return ofSiteFirst(there, all, most);
}
