import { z } from 'zod';
import { readingPlaces } from '@/lib/growing/vocabulary';
import { id, identity, instant, note, resource, voided, voidedOf } from './resource';
import { siteIdTold, withSitesTold } from './site-told';
import { decimal, moment, momentOrNull } from './told';

const quantity = z.int().nullable();

export const treatments = resource({
  name: 'treatments',
  one: 'a treatment run',
  about: 'One load treated in one go; batches of a run share its fate.',
  schema: z.object({
    ...identity,
    code: z.string(),
    siteId: siteIdTold,
    methodId: id,
    startedAt: instant,
    endedAt: instant.nullable(),
    waterMillilitres: quantity,
    limeGrams: quantity,
    loadGrams: quantity.describe('Material as it was put in, before it took up water.'),
    loadCelsiusAtSpawning: z.number().nullable(),
    note,
    voided,
  }),
  filters: { site: id, method: id, state: z.enum(['running', 'ended']) },
  rows: async (context, where, page, { site, method, state }) =>
    withSitesTold(
      context,
      await context.db.treatmentRun.findMany({
        where: {
          ...where,
          ...(site === undefined ? {} : { siteId: site }),
          ...(method === undefined ? {} : { methodId: method }),
          ...(state === undefined ? {} : { endedAt: state === 'running' ? null : { not: null } }),
        },
        ...page,
      }),
    ),
  tell: (row) => ({
    ...{ id: row.id, revision: row.revision, code: row.code, siteId: row.siteId, methodId: row.methodId },
    ...{ startedAt: moment(row.startedAt), endedAt: momentOrNull(row.endedAt) },
    ...{ waterMillilitres: row.waterMillilitres, limeGrams: row.limeGrams, loadGrams: row.loadGrams },
    loadCelsiusAtSpawning: decimal(row.loadCelsiusAtSpawning),
    ...{ note: row.note, voided: voidedOf(row) },
  }),
});

export const readings = resource({
  name: 'readings',
  one: 'a reading of a treatment',
  about: 'Temperature and pH read during a treatment run.',
  schema: z.object({
    ...identity,
    treatmentRunId: id,
    siteId: siteIdTold,
    readAt: instant,
    place: z.enum(readingPlaces),
    celsius: z.number().nullable(),
    ph: z.number().nullable(),
    voided,
  }),
  filters: { site: id, treatment: id },
  rows: async (context, where, page, { site, treatment }) =>
    withSitesTold(
      context,
      await context.db.treatmentReading.findMany({
        where: {
          ...where,
          ...(site === undefined ? {} : { siteId: site }),
          ...(treatment === undefined ? {} : { treatmentRunId: treatment }),
        },
        ...page,
      }),
    ),
  tell: (row) => ({
    ...{ id: row.id, revision: row.revision, treatmentRunId: row.treatmentRunId, siteId: row.siteId },
    ...{ readAt: moment(row.readAt), place: row.place, celsius: decimal(row.celsius), ph: decimal(row.ph) },
    voided: voidedOf(row),
  }),
});
