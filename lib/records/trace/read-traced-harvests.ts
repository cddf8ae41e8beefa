import 'server-only';
import type { ScopedDb } from '@/lib/access/scoped-db';
import { asCalendarDate } from '../fields/stored-date';
import { inParts } from './in-parts';
import type { TracedHarvest } from './trace-view';

const live = { voidedAt: null };

/** Weighings with where they went, the earliest first; `traced` are the batches whose share is asked for. */
export async function readTracedHarvests(
  db: ScopedDb,
  ids: readonly string[],
  traced: ReadonlySet<string>,
): Promise<TracedHarvest[]> {
  const rows = await inParts(ids, (part) =>
    db.weighing.findMany({
      where: { id: { in: part } },
      include: {
        site: { select: { name: true } },
        lines: { where: live, orderBy: { id: 'asc' } },
        destinations: { where: live },
      },
      orderBy: [{ weighedOn: 'asc' }, { id: 'asc' }],
    }),
  );
  return rows.map((row) => {
    const said = row.destinations.reduce((sum, { grams }) => sum + grams, 0);
    const own = row.lines.filter(({ batchId }) => traced.has(batchId));
    return {
      id: row.id,
      siteName: row.site.name,
      weighedOn: asCalendarDate(row.weighedOn),
      freshGrams: row.freshGrams,
      tracedGrams: own.reduce((sum, { freshGrams }) => sum + freshGrams, 0),
      batchIds: own.map(({ batchId }) => batchId),
      mixed: own.length < row.lines.length,
      destinations: Object.fromEntries(
        row.destinations.map(({ destination, grams }) => [destination, grams]),
      ),
      notSaidGrams: row.freshGrams - said,
    };
  });
}
