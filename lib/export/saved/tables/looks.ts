import type { Prisma } from '@/lib/database/generated/client';
import { dateCell } from '../cells';
import { readPages } from '../read-pages';
import { savedTable } from '../saved-table';
import { batchColumns, eventWhere, noteColumns, ofBatch } from './batch-event-rows';

/** Looks at which nothing new was found, of the batches of the list. */
export const looks = savedTable<Prisma.LookGetPayload<{ include: typeof ofBatch }>>(
  [
    ...batchColumns,
    { key: 'lookedOn', kind: 'date', blank: 'never', cell: (row) => dateCell(row.lookedOn) },
    ...noteColumns,
  ],
  (context, query) =>
    readPages(context, (start) =>
      context.db.look.findMany({
        ...{ where: eventWhere(query), include: ofBatch, orderBy: [{ lookedOn: 'desc' }, { id: 'desc' }] },
        ...start,
      }),
    ),
);
