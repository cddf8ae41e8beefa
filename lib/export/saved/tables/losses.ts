import type { Prisma } from '@/lib/database/generated/client';
import { codesCell, dateCell } from '../cells';
import { readPages } from '../read-pages';
import { savedTable } from '../saved-table';
import { eventWhere, ofBatch } from './batch-event-rows';

const include = {
  ...ofBatch,
  namedUnits: { where: { voidedAt: null }, orderBy: { unitNumber: 'asc' } },
} satisfies Prisma.LossInclude;

/** Units lost otherwise than by contamination, of the batches of the list. */
export const losses = savedTable<Prisma.LossGetPayload<{ include: typeof include }>>(
  [
    { key: 'batch', kind: 'text', blank: 'never', cell: (row) => row.batch.code },
    { key: 'site', kind: 'text', blank: 'never', cell: (row) => row.batch.site.name },
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
    {
      ...{ key: 'unitNumbers', kind: 'text', blank: 'notRecorded' },
      cell: (row) => codesCell(row.namedUnits.map(({ unitNumber }) => String(unitNumber))),
    },
    { key: 'note', kind: 'text', blank: 'none', cell: (row) => row.note },
    { key: 'voided', kind: 'yesNo', blank: 'never', cell: (row) => row.voidedAt !== null },
  ],
  (context, query) =>
    readPages(context, (start) =>
      context.db.loss.findMany({
        ...{ where: eventWhere(query), include, orderBy: [{ lostOn: 'desc' }, { id: 'desc' }] },
        ...start,
      }),
    ),
);
