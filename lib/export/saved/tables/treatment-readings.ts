import type { Prisma } from '@/lib/database/generated/client';
import { treatmentFilterInput } from '@/lib/records/treatment/treatment-filter.input';
import { treatmentWhere } from '@/lib/records/treatment/treatment-where';
import { decimalCell, momentCell, nameCell } from '../cells';
import { readPages } from '../read-pages';
import { savedTable } from '../saved-table';
import { nameOfSite, type WithSite, withSites } from './with-sites';

const include = { run: { include: { method: true } } } satisfies Prisma.TreatmentReadingInclude;

type Reading = WithSite<Prisma.TreatmentReadingGetPayload<{ include: typeof include }>>;

/** What was read during the runs of the list. */
export const treatmentReadings = savedTable<Reading>(
  [
    { key: 'run', kind: 'text', blank: 'never', cell: (row) => row.run.code },
    { key: 'site', kind: 'text', blank: 'notShared', cell: (row) => nameOfSite(row.site) },
    {
      key: 'method',
      kind: 'text',
      blank: 'never',
      cell: (row, language) => nameCell(row.run.method, language),
    },
    {
      key: 'readAt',
      kind: 'moment',
      blank: 'never',
      cell: (row) => momentCell(row.readAt, row.site.timeZone),
    },
    { key: 'timeZone', kind: 'text', blank: 'never', cell: (row) => row.site.timeZone },
    { key: 'readingPlace', kind: 'choice', words: 'readingPlace', blank: 'never', cell: (row) => row.place },
    {
      key: 'celsius',
      kind: 'number',
      unit: 'celsius',
      blank: 'notRecorded',
      cell: (row) => decimalCell(row.celsius),
    },
    { key: 'ph', kind: 'number', unit: 'ph', blank: 'notRecorded', cell: (row) => decimalCell(row.ph) },
  ],
  (context, query) => {
    const where = { run: treatmentWhere(treatmentFilterInput.parse(query)), voidedAt: null };
    return readPages(context, async (start) => {
      const readings = await context.db.treatmentReading.findMany({
        ...{ where, include, orderBy: [{ readAt: 'desc' }, { id: 'desc' }] },
        ...start,
      });
      return withSites(context, readings, ({ run }) => run.siteId);
    });
  },
);
