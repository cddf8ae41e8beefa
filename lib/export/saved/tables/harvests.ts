import type { Prisma } from '@/lib/database/generated/client';
import { weighingFilterInput } from '@/lib/records/weighing/weighing-filter.input';
import { weighingWhere } from '@/lib/records/weighing/weighing-where';
import { dateCell } from '../cells';
import { readPages } from '../read-pages';
import { savedTable } from '../saved-table';

const include = { weighing: { include: { site: true } }, batch: true } satisfies Prisma.WeighingLineInclude;

/** What each batch had of the weighings of the list, one line a batch and weighing. */
export const harvests = savedTable<Prisma.WeighingLineGetPayload<{ include: typeof include }>>(
  [
    { key: 'weighedOn', kind: 'date', blank: 'never', cell: (row) => dateCell(row.weighing.weighedOn) },
    { key: 'site', kind: 'text', blank: 'never', cell: (row) => row.weighing.site.name },
    { key: 'batch', kind: 'text', blank: 'never', cell: (row) => row.batch.code },
    { key: 'flush', kind: 'number', unit: 'one', blank: 'never', cell: (row) => row.flush },
    { key: 'freshGrams', kind: 'number', unit: 'gram', blank: 'never', cell: (row) => row.freshGrams },
    {
      key: 'trimState',
      kind: 'choice',
      words: 'trimState',
      blank: 'never',
      cell: (row) => row.weighing.trimState,
    },
    { key: 'sharedWeighing', kind: 'yesNo', blank: 'never', cell: (row) => row.sharedWeighing },
    { key: 'forcedFlush', kind: 'yesNo', blank: 'notRecorded', cell: (row) => row.forcedFlush },
    { key: 'voided', kind: 'yesNo', blank: 'never', cell: (row) => row.weighing.voidedAt !== null },
  ],
  (context, query) => {
    const where = { weighing: weighingWhere(weighingFilterInput.parse(query)), voidedAt: null };
    return readPages(context, (start) =>
      context.db.weighingLine.findMany({
        ...{ where, include, orderBy: [{ weighing: { weighedOn: 'desc' } }, { id: 'desc' }] },
        ...start,
      }),
    );
  },
);
