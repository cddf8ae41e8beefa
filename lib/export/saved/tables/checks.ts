import type { Prisma } from '@/lib/database/generated/client';
import { dateCell } from '../cells';
import { readPages } from '../read-pages';
import { savedTable } from '../saved-table';
import { batchColumns, eventWhere, noteColumns, ofBatch } from './batch-event-rows';

/** Days on which batches of the list were seen fully colonised or with pins. */
export const checks = savedTable<Prisma.CheckGetPayload<{ include: typeof ofBatch }>>(
  [
    ...batchColumns,
    { key: 'checkedOn', kind: 'date', blank: 'never', cell: (row) => dateCell(row.checkedOn) },
    { key: 'seen', kind: 'choice', words: 'checkKind', blank: 'never', cell: (row) => row.kind },
    ...noteColumns,
  ],
  (context, query) =>
    readPages(context, (start) =>
      context.db.check.findMany({
        ...{ where: eventWhere(query), include: ofBatch, orderBy: [{ checkedOn: 'desc' }, { id: 'desc' }] },
        ...start,
      }),
    ),
);
