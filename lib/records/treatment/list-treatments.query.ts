import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { lotsPerPage } from '../fields/lot-filter.input';
import { sitesAsShown } from '../sharing/sites-as-shown';
import type { TreatmentFilter } from './treatment-filter.input';
import { treatmentWhere } from './treatment-where';

/** Runs that the actor may see, latest started first, a page at a time. */
export async function listTreatments(context: ReadContext, filter: TreatmentFilter) {
  const { db } = context;
  const [at = '', id = ''] = (filter.after ?? '').split('_');
  const startedAt = new Date(at);
  const after =
    Number.isNaN(startedAt.getTime()) || !/^[0-9a-f-]{36}$/.test(id) ? undefined : { startedAt, id };
  const rows = await db.treatmentRun.findMany({
    where: {
      ...treatmentWhere(filter),
      ...(after === undefined
        ? {}
        : {
            OR: [
              { startedAt: { lt: after.startedAt } },
              { startedAt: after.startedAt, id: { lt: after.id } },
            ],
          }),
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
