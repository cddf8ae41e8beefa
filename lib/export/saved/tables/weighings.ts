import type { Prisma } from '@/lib/database/generated/client';
import type { Destination } from '@/lib/growing/vocabulary';
import { weighingFilterInput } from '@/lib/records/weighing/weighing-filter.input';
import { weighingWhere } from '@/lib/records/weighing/weighing-where';
import { codesCell, dateCell } from '../cells';
import { readPages } from '../read-pages';
import { savedTable } from '../saved-table';

const include = {
  site: true,
  lines: { where: { voidedAt: null }, include: { batch: true }, orderBy: { id: 'asc' } },
  destinations: { where: { voidedAt: null } },
} satisfies Prisma.WeighingInclude;

type Row = Prisma.WeighingGetPayload<{ include: typeof include }>;

const gramsTo = (destination: Destination) => (row: Row) =>
  row.destinations.find((one) => one.destination === destination)?.grams ?? null;

/** The list of weighings: one line for each time on the scale. */
export const weighings = savedTable<Row>(
  [
    { key: 'weighedOn', kind: 'date', blank: 'never', cell: (row) => dateCell(row.weighedOn) },
    { key: 'site', kind: 'text', blank: 'never', cell: (row) => row.site.name },
    {
      ...{ key: 'batches', kind: 'text', blank: 'none' },
      cell: (row) => codesCell(row.lines.map(({ batch }) => batch.code)),
    },
    { key: 'freshGrams', kind: 'number', unit: 'gram', blank: 'never', cell: (row) => row.freshGrams },
    { key: 'trimState', kind: 'choice', words: 'trimState', blank: 'never', cell: (row) => row.trimState },
    { key: 'grade', kind: 'text', blank: 'notRecorded', cell: (row) => row.grade },
    { key: 'soldGrams', kind: 'number', unit: 'gram', blank: 'none', cell: gramsTo('sold') },
    { key: 'givenGrams', kind: 'number', unit: 'gram', blank: 'none', cell: gramsTo('given') },
    { key: 'keptGrams', kind: 'number', unit: 'gram', blank: 'none', cell: gramsTo('kept') },
    { key: 'discardedGrams', kind: 'number', unit: 'gram', blank: 'none', cell: gramsTo('discarded') },
    { key: 'note', kind: 'text', blank: 'none', cell: (row) => row.note },
    { key: 'voided', kind: 'yesNo', blank: 'never', cell: (row) => row.voidedAt !== null },
  ],
  (context, query) => {
    const where = weighingWhere(weighingFilterInput.parse(query));
    return readPages(context, (start) =>
      context.db.weighing.findMany({
        where,
        include,
        orderBy: [{ weighedOn: 'desc' }, { id: 'desc' }],
        ...start,
      }),
    );
  },
);
