import { z } from 'zod';
import type { Prisma } from '@/lib/database/generated/client';
import { secondLifeWays } from '@/lib/growing/vocabulary';
import { batchInclude, batchSchema, tellBatch } from './batches';
import { id, resource } from './resource';

const include = {
  ...batchInclude,
  sources: { where: { voidedAt: null }, orderBy: { id: 'asc' } },
} satisfies Prisma.BatchInclude;

export const secondLives = resource({
  name: 'second-lives',
  one: 'a second life',
  about:
    'Batches made of units of spent ones. Each is among the batches, too, and is closed, reopened and voided there.',
  schema: batchSchema.extend({
    sources: z
      .array(z.object({ batchId: id, units: z.int() }))
      .describe('The spent batches, and how many units of each went on.'),
    way: z.enum(secondLifeWays).nullable(),
  }),
  filters: { site: id, source: id },
  rows: ({ db }, where, page, { site, source }) =>
    db.batch.findMany({
      where: {
        ...where,
        secondLife: true,
        ...(site === undefined ? {} : { siteId: site }),
        ...(source === undefined ? {} : { sources: { some: { sourceBatchId: source, voidedAt: null } } }),
      },
      include,
      ...page,
    }),
  tell: (row) => ({
    ...tellBatch(row),
    sources: row.sources.map(({ sourceBatchId, unitsMoved }) => ({
      batchId: sourceBatchId,
      units: unitsMoved,
    })),
    way: row.secondLifeWay,
  }),
});
