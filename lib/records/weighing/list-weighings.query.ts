import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { lotCursor } from '../fields/lot-filter.input';
import { asCalendarDate, asDate } from '../fields/stored-date';
import type { WeighingFilter } from './weighing-filter.input';
import { type WeighingView, weighingInclude, weighingView } from './weighing-view';
import { weighingWhere } from './weighing-where';

export const weighingsPerPage = 50;

/** Weighings that the actor may see, newest first, a page at a time; `next` is the address of the following page. */
export async function listWeighings(
  { db }: ReadContext,
  filter: WeighingFilter,
): Promise<{ weighings: WeighingView[]; next: string | undefined }> {
  const after = lotCursor(filter.after);
  const rows = await db.weighing.findMany({
    where: {
      ...weighingWhere(filter),
      ...(after === undefined
        ? {}
        : {
            OR: [
              { weighedOn: { lt: asDate(after.date) } },
              { weighedOn: asDate(after.date), id: { lt: after.id } },
            ],
          }),
    },
    include: weighingInclude,
    orderBy: [{ weighedOn: 'desc' }, { id: 'desc' }],
    take: weighingsPerPage + 1,
  });
  const shown = rows.slice(0, weighingsPerPage);
  const last = shown.at(-1);
  return {
    weighings: shown.map(weighingView),
    next: rows.length > weighingsPerPage && last ? `${asCalendarDate(last.weighedOn)}_${last.id}` : undefined,
  };
}
