import { z } from 'zod';
import { materialKinds, methodKinds } from '@/lib/growing/vocabulary';
import { date, identity, note, resource, voided, voidedOf } from './resource';
import { dayOrNull, decimal } from './told';

const names = { nameEn: z.string(), nameEs: z.string() };
const namesOf = (row: { readonly nameEn: string; readonly nameEs: string }) => ({
  nameEn: row.nameEn,
  nameEs: row.nameEs,
});

export const sites = resource({
  name: 'sites',
  one: 'a site',
  about: 'A farm or garden of the network.',
  schema: z.object({
    ...identity,
    code: z.string(),
    name: z.string(),
    kind: z.string(),
    timeZone: z.string().describe('IANA name; calendar dates of its records are in it.'),
    openedOn: date.nullable(),
    closedOn: date.nullable(),
    note,
    voided,
  }),
  rows: ({ db }, where, page) => db.site.findMany({ where, ...page }),
  tell: (row) => ({
    ...{ id: row.id, revision: row.revision, code: row.code, name: row.name, kind: row.kind },
    ...{ timeZone: row.timeZone, openedOn: dayOrNull(row.openedOn), closedOn: dayOrNull(row.closedOn) },
    ...{ note: row.note, voided: voidedOf(row) },
  }),
});

export const species = resource({
  name: 'species',
  one: 'a species',
  about: 'Species that the network grows.',
  schema: z.object({ ...identity, code: z.string(), ...names, scientificName: z.string(), voided }),
  rows: ({ db }, where, page) => db.species.findMany({ where, ...page }),
  tell: (row) => ({
    ...{ id: row.id, revision: row.revision, code: row.code, ...namesOf(row) },
    ...{ scientificName: row.scientificName, voided: voidedOf(row) },
  }),
});

export const materials = resource({
  name: 'materials',
  one: 'a material',
  about: 'Substrate materials.',
  schema: z.object({
    ...identity,
    code: z.string(),
    ...names,
    kind: z.enum(materialKinds),
    receivedMoisturePercent: z
      .number()
      .nullable()
      .describe('Assumed of a lot without a moisture of its own.'),
    voided,
  }),
  rows: ({ db }, where, page) => db.material.findMany({ where, ...page }),
  tell: (row) => ({
    ...{ id: row.id, revision: row.revision, code: row.code, ...namesOf(row), kind: row.kind },
    ...{ receivedMoisturePercent: decimal(row.receivedMoisturePercent), voided: voidedOf(row) },
  }),
});

export const methods = resource({
  name: 'methods',
  one: 'a method',
  about: 'Treatment methods and the window that a run of each has to keep.',
  schema: z.object({
    ...identity,
    code: z.string(),
    ...names,
    kind: z.enum(methodKinds),
    minCelsius: z.number().nullable(),
    maxCelsius: z.number().nullable(),
    minPh: z.number().nullable(),
    minMinutes: z.int().nullable(),
    maxMinutes: z.int().nullable(),
    voided,
  }),
  rows: ({ db }, where, page) => db.method.findMany({ where, ...page }),
  tell: (row) => ({
    ...{ id: row.id, revision: row.revision, code: row.code, ...namesOf(row), kind: row.kind },
    ...{
      minCelsius: decimal(row.minCelsius),
      maxCelsius: decimal(row.maxCelsius),
      minPh: decimal(row.minPh),
    },
    ...{ minMinutes: row.minMinutes, maxMinutes: row.maxMinutes, voided: voidedOf(row) },
  }),
});
