import type { Prisma } from '@/lib/database/generated/client';
import { lotFilterInput } from '@/lib/records/fields/lot-filter.input';
import { dateCell, decimalCell, nameCell } from '../cells';
import { readPages } from '../read-pages';
import { savedTable } from '../saved-table';

const include = { material: true } satisfies Prisma.SubstrateLotInclude;

/** The list of substrate lots. */
export const substrateLots = savedTable<Prisma.SubstrateLotGetPayload<{ include: typeof include }>>(
  [
    { key: 'lot', kind: 'text', blank: 'never', cell: (row) => row.code },
    {
      key: 'material',
      kind: 'text',
      blank: 'never',
      cell: (row, language) => nameCell(row.material, language),
    },
    { key: 'source', kind: 'text', blank: 'notRecorded', cell: (row) => row.sourceName },
    { key: 'receivedOn', kind: 'date', blank: 'never', cell: (row) => dateCell(row.receivedOn) },
    {
      key: 'receivedGrams',
      kind: 'number',
      unit: 'gram',
      blank: 'notRecorded',
      cell: (row) => row.receivedGrams,
    },
    {
      ...{ key: 'moisturePercent', kind: 'number', unit: 'percent', blank: 'notRecorded' },
      cell: (row) => decimalCell(row.moisturePercent),
    },
    {
      key: 'moistureSource',
      kind: 'choice',
      words: 'moistureSource',
      blank: 'never',
      cell: (row) => row.moistureSource,
    },
    {
      key: 'cutLengthMm',
      kind: 'number',
      unit: 'millimetre',
      blank: 'notRecorded',
      cell: (row) => row.cutLengthMm,
    },
    { key: 'note', kind: 'text', blank: 'none', cell: (row) => row.note },
  ],
  (context, query) => {
    const { of } = lotFilterInput.parse(query);
    const where = { voidedAt: null, ...(of === null ? {} : { materialId: of }) };
    return readPages(context, (start) =>
      context.db.substrateLot.findMany({
        ...{ where, include, orderBy: [{ receivedOn: 'desc' }, { id: 'desc' }] },
        ...start,
      }),
    );
  },
);
