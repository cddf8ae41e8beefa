import type { Prisma } from '@/lib/database/generated/client';
import { dateCell } from '../cells';
import { readPages } from '../read-pages';
import { savedTable } from '../saved-table';
import {
  batchColumns,
  eventWhere,
  noteColumns,
  ofBatch,
  ofNamedUnits,
  unitNumbersColumn,
} from './batch-event-rows';

const include = { ...ofBatch, ...ofNamedUnits } satisfies Prisma.LossInclude;

/** Units lost otherwise than by contamination, of the batches of the list. */
export const losses = savedTable<Prisma.LossGetPayload<{ include: typeof include }>>(
  [
    ...batchColumns,
    { key: 'lostOn', kind: 'date', blank: 'never', cell: (row) => dateCell(row.lostOn) },
    { key: 'unitsLost', kind: 'number', unit: 'one', blank: 'never', cell: (row) => row.units },
    {
      key: 'contaminatedAmong',
      kind: 'number',
      unit: 'one',
      blank: 'never',
      cell: (row) => row.contaminatedUnits,
    },
    { key: 'cause', kind: 'choice', words: 'lossCause', blank: 'never', cell: (row) => row.cause },
    unitNumbersColumn,
    ...noteColumns,
  ],
  (context, query) =>
    readPages(context, (start) =>
      context.db.loss.findMany({
        ...{ where: eventWhere(query), include, orderBy: [{ lostOn: 'desc' }, { id: 'desc' }] },
        ...start,
      }),
    ),
);
