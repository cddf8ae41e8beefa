import { z } from 'zod';
import { moistureSources, spawnForms } from '@/lib/growing/vocabulary';
import { date, id, identity, note, resource, voided, voidedOf } from './resource';
import { day, dayOrNull, decimal } from './told';

const grams = z.int().nullable();
const text = z.string().nullable();

export const substrateLots = resource({
  name: 'substrate-lots',
  one: 'a substrate lot',
  about: 'A delivery or heap of one material.',
  schema: z.object({
    ...identity,
    code: z.string(),
    materialId: id,
    sourceName: text,
    receivedOn: date,
    receivedGrams: grams,
    moisturePercent: z.number().nullable(),
    moistureSource: z.enum(moistureSources),
    cutLengthMillimetres: z.int().nullable(),
    note,
    voided,
  }),
  filters: { material: id },
  rows: ({ db }, where, page, { material }) =>
    db.substrateLot.findMany({
      where: { ...where, ...(material === undefined ? {} : { materialId: material }) },
      ...page,
    }),
  tell: (row) => ({
    ...{ id: row.id, revision: row.revision, code: row.code, materialId: row.materialId },
    ...{ sourceName: row.sourceName, receivedOn: day(row.receivedOn), receivedGrams: row.receivedGrams },
    ...{ moisturePercent: decimal(row.moisturePercent), moistureSource: row.moistureSource },
    ...{ cutLengthMillimetres: row.cutLengthMm, note: row.note, voided: voidedOf(row) },
  }),
});

export const spawnLots = resource({
  name: 'spawn-lots',
  one: 'a spawn lot',
  about: 'Spawn made or received in one go.',
  schema: z.object({
    ...identity,
    code: z.string(),
    speciesId: id,
    strain: text,
    form: z.enum(spawnForms),
    maker: text,
    makerCode: text,
    madeOn: date.nullable(),
    receivedOn: date.nullable(),
    receivedGrams: grams,
    parentLotId: id.nullable(),
    cultureName: text,
    generation: z.int().nullable(),
    note,
    voided,
  }),
  filters: { species: id },
  rows: ({ db }, where, page, { species }) =>
    db.spawnLot.findMany({
      where: { ...where, ...(species === undefined ? {} : { speciesId: species }) },
      ...page,
    }),
  tell: (row) => ({
    ...{ id: row.id, revision: row.revision, code: row.code, speciesId: row.speciesId, form: row.form },
    ...{ strain: row.strain, maker: row.maker, makerCode: row.makerCode, parentLotId: row.parentLotId },
    ...{ madeOn: dayOrNull(row.madeOn), receivedOn: dayOrNull(row.receivedOn) },
    ...{ receivedGrams: row.receivedGrams, cultureName: row.cultureName, generation: row.generation },
    ...{ note: row.note, voided: voidedOf(row) },
  }),
});
