import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** Reports that the actor may read, latest first: a funder sees published ones only. */
export async function listReports({ db }: ReadContext) {
  const rows = await db.report.findMany({
    where: { voidedAt: null },
    orderBy: [{ builtAt: 'desc' }, { id: 'desc' }],
    select: {
      id: true,
      title: true,
      version: true,
      periodFrom: true,
      periodTo: true,
      builtAt: true,
      publishedAt: true,
    },
    take: 200,
  });
  return rows.map((row) => ({
    id: row.id,
    title: row.title,
    version: row.version,
    from: row.periodFrom.toISOString().slice(0, 10),
    to: row.periodTo.toISOString().slice(0, 10),
    builtAt: row.builtAt,
    published: row.publishedAt !== null,
  }));
}
