import { z } from 'zod';
import type { Prisma } from '@/lib/database/generated/client';
import { type destinations, trimStates } from '@/lib/growing/vocabulary';
import { date, id, identity, note, resource, voided, voidedOf } from './resource';
import { day } from './told';

const live = { where: { voidedAt: null }, orderBy: { id: 'asc' } } as const;
const include = { lines: live, destinations: live } satisfies Prisma.WeighingInclude;
const grams = z.int();

export const weighings = resource({
  name: 'weighings',
  one: 'a weighing',
  about: 'One time on the scale, with a line for each batch in the crate.',
  schema: z.object({
    ...identity,
    siteId: id,
    weighedOn: date,
    freshGrams: grams.describe('Fresh mass without the crate.'),
    trimState: z.enum(trimStates),
    lines: z.array(
      z.object({
        batchId: id,
        flush: z.int(),
        freshGrams: grams,
        forcedFlush: z.enum(['yes', 'no']).nullable(),
        shared: z.boolean().describe('Whether the mass is a share by living units, not weighed by itself.'),
      }),
    ),
    soldGrams: grams.nullable(),
    givenGrams: grams.nullable(),
    keptGrams: grams.nullable(),
    discardedGrams: grams.nullable(),
    grade: z.string().nullable(),
    note,
    voided,
  }),
  filters: { site: id, batch: id },
  rows: ({ db }, where, page, { site, batch }) =>
    db.weighing.findMany({
      where: {
        ...where,
        ...(site === undefined ? {} : { siteId: site }),
        ...(batch === undefined ? {} : { lines: { some: { batchId: batch, voidedAt: null } } }),
      },
      include,
      ...page,
    }),
  tell: (row) => {
    const gone = (to: (typeof destinations)[number]) =>
      row.destinations.find(({ destination }) => destination === to)?.grams ?? null;
    return {
      ...{ id: row.id, revision: row.revision, siteId: row.siteId, weighedOn: day(row.weighedOn) },
      ...{ freshGrams: row.freshGrams, trimState: row.trimState },
      lines: row.lines.map((line) => ({
        ...{ batchId: line.batchId, flush: line.flush, freshGrams: line.freshGrams },
        forcedFlush: line.forcedFlush === null ? null : line.forcedFlush ? ('yes' as const) : ('no' as const),
        shared: line.sharedWeighing,
      })),
      ...{ soldGrams: gone('sold'), givenGrams: gone('given'), keptGrams: gone('kept') },
      discardedGrams: gone('discarded'),
      ...{ grade: row.grade, note: row.note, voided: voidedOf(row) },
    };
  },
});
