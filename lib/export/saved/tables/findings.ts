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

const include = { ...ofBatch, ...ofNamedUnits } satisfies Prisma.FindingInclude;

/** Units newly found contaminated in the batches of the list, one line a finding. */
export const findings = savedTable<Prisma.FindingGetPayload<{ include: typeof include }>>(
  [
    ...batchColumns,
    { key: 'foundOn', kind: 'date', blank: 'never', cell: (row) => dateCell(row.foundOn) },
    { key: 'newUnits', kind: 'number', unit: 'one', blank: 'never', cell: (row) => row.units },
    { key: 'sign', kind: 'choice', words: 'contaminationSign', blank: 'never', cell: (row) => row.sign },
    { key: 'stage', kind: 'choice', words: 'cropStage', blank: 'never', cell: (row) => row.stage },
    { key: 'action', kind: 'choice', words: 'findingAction', blank: 'never', cell: (row) => row.action },
    unitNumbersColumn,
    ...noteColumns,
  ],
  (context, query) =>
    readPages(context, (start) =>
      context.db.finding.findMany({
        ...{ where: eventWhere(query), include, orderBy: [{ foundOn: 'desc' }, { id: 'desc' }] },
        ...start,
      }),
    ),
);
