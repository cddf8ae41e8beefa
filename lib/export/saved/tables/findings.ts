import type { Prisma } from '@/lib/database/generated/client';
import { codesCell, dateCell } from '../cells';
import { readPages } from '../read-pages';
import { savedTable } from '../saved-table';
import { eventWhere, ofBatch } from './batch-event-rows';

const include = {
  ...ofBatch,
  namedUnits: { where: { voidedAt: null }, orderBy: { unitNumber: 'asc' } },
} satisfies Prisma.FindingInclude;

/** Units newly found contaminated in the batches of the list, one line a finding. */
export const findings = savedTable<Prisma.FindingGetPayload<{ include: typeof include }>>(
  [
    { key: 'batch', kind: 'text', blank: 'never', cell: (row) => row.batch.code },
    { key: 'site', kind: 'text', blank: 'never', cell: (row) => row.batch.site.name },
    { key: 'foundOn', kind: 'date', blank: 'never', cell: (row) => dateCell(row.foundOn) },
    { key: 'newUnits', kind: 'number', unit: 'one', blank: 'never', cell: (row) => row.units },
    { key: 'sign', kind: 'choice', words: 'contaminationSign', blank: 'never', cell: (row) => row.sign },
    { key: 'stage', kind: 'choice', words: 'cropStage', blank: 'never', cell: (row) => row.stage },
    { key: 'action', kind: 'choice', words: 'findingAction', blank: 'never', cell: (row) => row.action },
    {
      ...{ key: 'unitNumbers', kind: 'text', blank: 'notRecorded' },
      cell: (row) => codesCell(row.namedUnits.map(({ unitNumber }) => String(unitNumber))),
    },
    { key: 'note', kind: 'text', blank: 'none', cell: (row) => row.note },
    { key: 'voided', kind: 'yesNo', blank: 'never', cell: (row) => row.voidedAt !== null },
  ],
  (context, query) =>
    readPages(context, (start) =>
      context.db.finding.findMany({
        ...{ where: eventWhere(query), include, orderBy: [{ foundOn: 'desc' }, { id: 'desc' }] },
        ...start,
      }),
    ),
);
