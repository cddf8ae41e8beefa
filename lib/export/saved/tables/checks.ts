import type { Prisma } from '@/lib/database/generated/client';
import { dateCell } from '../cells';
import { readPages } from '../read-pages';
import { savedTable } from '../saved-table';
import { eventWhere, ofBatch } from './batch-event-rows';

/** Days on which batches of the list were seen fully colonised or with pins. */
export const checks = savedTable<Prisma.CheckGetPayload<{ include: typeof ofBatch }>>(
  [
    { key: 'batch', kind: 'text', blank: 'never', cell: (row) => row.batch.code },
    { key: 'site', kind: 'text', blank: 'never', cell: (row) => row.batch.site.name },
    { key: 'checkedOn', kind: 'date', blank: 'never', cell: (row) => dateCell(row.checkedOn) },
    { key: 'seen', kind: 'choice', words: 'checkKind', blank: 'never', cell: (row) => row.kind },
    { key: 'note', kind: 'text', blank: 'none', cell: (row) => row.note },
    { key: 'voided', kind: 'yesNo', blank: 'never', cell: (row) => row.voidedAt !== null },
  ],
  (context, query) =>
    readPages(context, (start) =>
      context.db.check.findMany({
        ...{ where: eventWhere(query), include: ofBatch, orderBy: [{ checkedOn: 'desc' }, { id: 'desc' }] },
        ...start,
      }),
    ),
);
