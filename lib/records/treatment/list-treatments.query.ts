import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { lotCursor, lotsPerPage } from '../fields/lot-filter.input';
import { sitesAsShown } from '../sharing/sites-as-shown';
import { runsInSight } from './runs-in-sight';
import type { TreatmentFilter } from './treatment-filter.input';
import { treatmentWhere } from './treatment-where';

/** Runs that the actor may see, latest started first, a page at a time. */
export async function listTreatments(context: ReadContext, filter: TreatmentFilter) {
  const { db } = context;
  const after = placeOf(filter.after);
  const rows = await db.treatmentRun.findMany({
    where: {
      AND: [
        treatmentWhere(filter),
        await runsInSight(context),
        after === undefined
          ? {}
          : {
              OR: [
                { startedAt: { lt: after.startedAt } },
                { startedAt: after.startedAt, id: { lt: after.id } },
              ],
            },
      ],
    },
    include: { method: true },
    orderBy: [{ startedAt: 'desc' }, { id: 'desc' }],
    take: lotsPerPage + 1,
  });
  const siteOf = await sitesAsShown(
    context,
    rows.map(({ siteId }) => siteId),
  );
  const runs = rows.slice(0, lotsPerPage).map((run) => ({
    id: run.id,
    code: run.code,
    site: siteOf(run.siteId).shown,
    timeZone: siteOf(run.siteId).timeZone,
    method: { kind: run.method.kind, en: run.method.nameEn, es: run.method.nameEs },
    startedAt: run.startedAt,
    endedAt: run.endedAt,
  }));
  const last = runs.at(-1);
  return {
    runs,
    next: rows.length > lotsPerPage && last ? `${last.startedAt.toISOString()}_${last.id}` : undefined,
  };
}

function placeOf(after: string | null): { startedAt: Date; id: string } | undefined {
  const [at = '', id = ''] = (after ?? '').split('_');
  const [day = ''] = at.split('T');
  const startedAt = new Date(at);
  return lotCursor(`${day}_${id}`) && !Number.isNaN(startedAt.getTime()) ? { startedAt, id } : undefined;
}
