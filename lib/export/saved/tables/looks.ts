import type { Prisma } from '@/lib/database/generated/client';
import { dateCell } from '../cells';
import { readPages } from '../read-pages';
import { savedTable } from '../saved-table';
import { eventWhere, ofBatch } from './batch-event-rows';

/** Looks at which nothing new was found, of the batches of the list. */
export const looks = savedTable<Prisma.LookGetPayload<{ include: typeof ofBatch }>>(
  [
    { key: 'batch', kind: 'text', blank: 'never', cell: (row) => row.batch.code },
    { key: 'site', kind: 'text', blank: 'never', cell: (row) => row.batch.site.name },
    { key: 'lookedOn', kind: 'date', blank: 'never', cell: (row) => dateCell(row.lookedOn) },
    { key: 'note', kind: 'text', blank: 'none', cell: (row) => row.note },
    { key: 'voided', kind: 'yesNo', blank: 'never', cell: (row) => row.voidedAt !== null },
  ],
  (context, query) =>
    readPages(context, (start) =>
      context.db.look.findMany({
        ...{ where: eventWhere(query), include: ofBatch, orderBy: [{ lookedOn: 'desc' }, { id: 'desc' }] },
        ...start,
      }),
    ),
);
