import { z } from 'zod';
import { conditionMeasures } from '@/lib/growing/vocabulary';
import { id, identity, instant, note, resource, voided, voidedOf } from './resource';
import { moment } from './told';

export const places = resource({
  name: 'places',
  one: 'a place',
  about: 'A room, tent, shelf or corner of a site where conditions are read.',
  schema: z.object({ ...identity, siteId: id, name: z.string(), note, voided }),
  filters: { site: id },
  rows: ({ db }, where, page, { site }) =>
    db.conditionPlace.findMany({
      where: { ...where, ...(site === undefined ? {} : { siteId: site }) },
      ...page,
    }),
  tell: (row) => ({
    ...{ id: row.id, revision: row.revision, siteId: row.siteId, name: row.name, note: row.note },
    voided: voidedOf(row),
  }),
});

export const conditions = resource({
  name: 'conditions',
  one: 'a reading of a place',
  about:
    'One value read at a place: temperature in °C, relative humidity in percent or carbon dioxide in ppm.',
  schema: z.object({
    ...identity,
    placeId: id,
    siteId: id,
    readAt: instant,
    measure: z.enum(conditionMeasures),
    value: z.number(),
    unit: z.enum(['Cel', '%', '[ppm]']).describe('UCUM code.'),
    voided,
  }),
  filters: { place: id, site: id, measure: z.enum(conditionMeasures) },
  rows: ({ db }, where, page, { place, site, measure }) =>
    db.conditionReading.findMany({
      where: {
        ...where,
        ...(place === undefined ? {} : { placeId: place }),
        ...(site === undefined ? {} : { siteId: site }),
        ...(measure === undefined ? {} : { measure: z.enum(conditionMeasures).parse(measure) }),
      },
      ...page,
    }),
  tell: (row) => ({
    ...{ id: row.id, revision: row.revision, placeId: row.placeId, siteId: row.siteId },
    ...{ readAt: moment(row.readAt), measure: row.measure, value: row.value.toNumber() },
    unit: unitOf[row.measure],
    voided: voidedOf(row),
  }),
});

const unitOf = { temperature: 'Cel', humidity: '%', carbon_dioxide: '[ppm]' } as const;
