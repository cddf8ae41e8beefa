import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { datedWhere, pageOf } from '../programme/dated-page';
import { type ProgrammeFilter, programmeRowsPerPage } from '../programme/programme-filter.input';
import { saleInclude, saleView } from './sale-view';

/** Sales that the actor may see, newest first, a page at a time. */
export async function listSales({ db }: ReadContext, filter: ProgrammeFilter) {
  const rows = await db.sale.findMany({
    where: {
      ...datedWhere(filter, 'soldOn'),
      ...(filter.outlet === null ? {} : { outlet: filter.outlet }),
    },
    include: saleInclude,
    orderBy: [{ soldOn: 'desc' }, { id: 'desc' }],
    take: programmeRowsPerPage + 1,
  });
  const page = pageOf(rows, ({ id, soldOn }) => ({ id, on: soldOn }));
  return { sales: page.rows.map(saleView), next: page.next };
}
