import { z } from 'zod';
import type { Prisma } from '@/lib/database/generated/client';
import { decimalCell, momentCell } from '../cells';
import { readPages } from '../read-pages';
import { savedTable } from '../saved-table';

const include = { place: { include: { site: true } } } satisfies Prisma.ConditionReadingInclude;
const placeInput = z.object({ place: z.uuid() });

const unitOf = { temperature: 'Cel', humidity: '%', carbon_dioxide: '[ppm]' } as const;

/** All that was read at one place, latest first. */
export const conditions = savedTable<Prisma.ConditionReadingGetPayload<{ include: typeof include }>>(
  [
    { key: 'site', kind: 'text', blank: 'never', cell: (row) => row.place.site.name },
    { key: 'place', kind: 'text', blank: 'never', cell: (row) => row.place.name },
    {
      key: 'readAt',
      kind: 'moment',
      blank: 'never',
      cell: (row) => momentCell(row.readAt, row.place.site.timeZone),
    },
    { key: 'timeZone', kind: 'text', blank: 'never', cell: (row) => row.place.site.timeZone },
    { key: 'measure', kind: 'choice', words: 'conditionMeasure', blank: 'never', cell: (row) => row.measure },
    { key: 'value', kind: 'number', blank: 'never', cell: (row) => decimalCell(row.value) },
    { key: 'valueUnit', kind: 'text', blank: 'never', cell: (row) => unitOf[row.measure] },
    { key: 'origin', kind: 'choice', words: 'recordOrigin', blank: 'never', cell: (row) => row.origin },
  ],
  async function* (context, query) {
    const asked = placeInput.safeParse(query);
    if (!asked.success) return;
    const where = { placeId: asked.data.place, voidedAt: null };
    yield* readPages(context, (start) =>
      context.db.conditionReading.findMany({
        where,
        include,
        orderBy: [{ readAt: 'desc' }, { id: 'desc' }],
        ...start,
      }),
    );
  },
);
