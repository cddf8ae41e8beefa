import type { Prisma } from '@/lib/database/generated/client';
import { treatmentFilterInput } from '@/lib/records/treatment/treatment-filter.input';
import { treatmentWhere } from '@/lib/records/treatment/treatment-where';
import { decimalCell, momentCell, nameCell } from '../cells';
import { readPages } from '../read-pages';
import { savedTable } from '../saved-table';
import { nameOfSite, type WithSite, withSites } from './with-sites';

const include = {
  method: true,
  _count: { select: { readings: { where: { voidedAt: null } } } },
} satisfies Prisma.TreatmentRunInclude;

type Run = WithSite<Prisma.TreatmentRunGetPayload<{ include: typeof include }>>;

/** The list of treatments: one line a run. */
export const treatments = savedTable<Run>(
  [
    { key: 'run', kind: 'text', blank: 'never', cell: (row) => row.code },
    { key: 'site', kind: 'text', blank: 'notShared', cell: (row) => nameOfSite(row.site) },
    { key: 'method', kind: 'text', blank: 'never', cell: (row, language) => nameCell(row.method, language) },
    {
      key: 'startedAt',
      kind: 'moment',
      blank: 'never',
      cell: (row) => momentCell(row.startedAt, row.site.timeZone),
    },
    {
      key: 'endedAt',
      kind: 'moment',
      blank: 'notYet',
      cell: (row) => momentCell(row.endedAt, row.site.timeZone),
    },
    { key: 'timeZone', kind: 'text', blank: 'never', cell: (row) => row.site.timeZone },
    {
      ...{ key: 'waterMillilitres', kind: 'number', unit: 'millilitre', blank: 'notRecorded' },
      cell: (row) => row.waterMillilitres,
    },
    { key: 'limeGrams', kind: 'number', unit: 'gram', blank: 'notRecorded', cell: (row) => row.limeGrams },
    { key: 'loadGrams', kind: 'number', unit: 'gram', blank: 'notRecorded', cell: (row) => row.loadGrams },
    {
      ...{ key: 'loadCelsius', kind: 'number', unit: 'celsius', blank: 'notRecorded' },
      cell: (row) => decimalCell(row.loadCelsiusAtSpawning),
    },
    { key: 'readings', kind: 'number', unit: 'one', blank: 'never', cell: (row) => row._count.readings },
    { key: 'note', kind: 'text', blank: 'none', cell: (row) => row.note },
  ],
  (context, query) => {
    const where = treatmentWhere(treatmentFilterInput.parse(query));
    return readPages(context, async (start) => {
      const runs = await context.db.treatmentRun.findMany({
        ...{ where, include, orderBy: [{ startedAt: 'desc' }, { id: 'desc' }] },
        ...start,
      });
      return withSites(context, runs, (run) => run.siteId);
    });
  },
);
