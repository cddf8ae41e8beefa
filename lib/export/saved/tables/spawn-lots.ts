import type { Prisma } from '@/lib/database/generated/client';
import { lotFilterInput } from '@/lib/records/fields/lot-filter.input';
import { dateCell, nameCell } from '../cells';
import { readPages } from '../read-pages';
import { savedTable } from '../saved-table';

const include = { species: true, parent: true } satisfies Prisma.SpawnLotInclude;

/** The list of spawn lots. */
export const spawnLots = savedTable<Prisma.SpawnLotGetPayload<{ include: typeof include }>>(
  [
    { key: 'lot', kind: 'text', blank: 'never', cell: (row) => row.code },
    {
      key: 'species',
      kind: 'text',
      blank: 'never',
      cell: (row, language) => nameCell(row.species, language),
    },
    { key: 'scientificName', kind: 'text', blank: 'never', cell: (row) => row.species.scientificName },
    { key: 'strain', kind: 'text', blank: 'notRecorded', cell: (row) => row.strain },
    { key: 'spawnForm', kind: 'choice', words: 'spawnForm', blank: 'never', cell: (row) => row.form },
    { key: 'maker', kind: 'text', blank: 'notRecorded', cell: (row) => row.maker },
    { key: 'makerCode', kind: 'text', blank: 'notRecorded', cell: (row) => row.makerCode },
    { key: 'madeOn', kind: 'date', blank: 'notRecorded', cell: (row) => dateCell(row.madeOn) },
    { key: 'receivedOn', kind: 'date', blank: 'notRecorded', cell: (row) => dateCell(row.receivedOn) },
    {
      key: 'receivedGrams',
      kind: 'number',
      unit: 'gram',
      blank: 'notRecorded',
      cell: (row) => row.receivedGrams,
    },
    { key: 'parentLot', kind: 'text', blank: 'notRecorded', cell: (row) => row.parent?.code ?? null },
    { key: 'culture', kind: 'text', blank: 'notRecorded', cell: (row) => row.cultureName },
    { key: 'generation', kind: 'number', unit: 'one', blank: 'notRecorded', cell: (row) => row.generation },
    { key: 'note', kind: 'text', blank: 'none', cell: (row) => row.note },
  ],
  (context, query) => {
    const { of } = lotFilterInput.parse(query);
    const where = { voidedAt: null, ...(of === null ? {} : { speciesId: of }) };
    return readPages(context, (start) =>
      context.db.spawnLot.findMany({ where, include, orderBy: { id: 'desc' }, ...start }),
    );
  },
);
