import { z } from 'zod';
import type { Prisma } from '@/lib/database/generated/client';
import { componentRoles, containerKinds, moistureSources } from '@/lib/growing/vocabulary';
import { massStages } from '@/lib/records/batch/batch-fields.input';
import { closeReasons, noHarvestAnswers, spentDestinations } from '@/lib/records/batch/close-batch.input';
import { date, id, identity, note, resource, voided, voidedOf } from './resource';
import { day, dayOrNull, decimal } from './told';

const live = { where: { voidedAt: null }, orderBy: { id: 'asc' } } as const;
export const batchInclude = { components: live, spawnShares: live } satisfies Prisma.BatchInclude;

const grams = z.int().nullable();

const component = z.object({
  lotId: id,
  treatment: z.string().describe('run:<id of a treatment> or method:<id>'),
  role: z.enum(componentRoles),
  massGrams: grams,
  massStage: z.enum(massStages),
});

/** A batch as scripts read it; the names are those that its writes take. */
export const batchSchema = z.object({
  ...identity,
  code: z.string(),
  siteId: id,
  speciesId: id,
  containerKind: z.enum(containerKinds),
  unitCount: z.int(),
  inoculatedOn: date,
  startedById: id.nullable(),
  components: z.array(component),
  spawn: z.array(z.object({ lotId: id, massGrams: grams })),
  wetGrams: grams.describe('Substrate as filled, spawn not counted.'),
  moistureSource: z.enum(moistureSources),
  moisturePercent: z.number().nullable().describe('Percent of the wet mass.'),
  dryGrams: grams.describe('Dry substrate, which biological efficiency divides by.'),
  dryAssumed: z.boolean().describe('Whether the moisture behind it was assumed.'),
  spawnGrams: grams,
  bedAreaSquareCentimetres: z.int().nullable(),
  logWoodCode: z.int().nullable(),
  logDiameterMillimetres: z.int().nullable(),
  logLengthMillimetres: z.int().nullable(),
  logGreenMassGrams: grams,
  secondLife: z.boolean(),
  contaminationAssessedOn: date.nullable().describe('The day on which it enters rates of contamination.'),
  yieldAssessedOn: date.nullable().describe('The day on which it enters yields.'),
  closedOn: date.nullable(),
  closeReason: z.enum(closeReasons).nullable(),
  spentDestination: z.enum(spentDestinations).nullable(),
  noHarvest: z.enum(noHarvestAnswers).nullable(),
  note,
  voided,
});

type BatchRow = Prisma.BatchGetPayload<{ include: typeof batchInclude }>;

export const tellBatch = (row: BatchRow): z.input<typeof batchSchema> => ({
  ...{ id: row.id, revision: row.revision, code: row.code, siteId: row.siteId, speciesId: row.speciesId },
  ...{ containerKind: row.containerKind, unitCount: row.unitCount, startedById: row.startedById },
  inoculatedOn: day(row.inoculatedOn),
  components: row.components.map((one) => ({
    lotId: one.substrateLotId,
    treatment: one.treatmentRunId === null ? `method:${one.methodId}` : `run:${one.treatmentRunId}`,
    ...{ role: one.role, massGrams: one.grams, massStage: one.massStage },
  })),
  spawn: row.spawnShares.map((share) => ({ lotId: share.spawnLotId, massGrams: share.grams })),
  ...{ wetGrams: row.wetGrams, moistureSource: row.moistureSource, dryGrams: row.dryGrams },
  moisturePercent: decimal(row.moisturePercent),
  ...{ dryAssumed: row.dryAssumed, spawnGrams: row.spawnGrams, secondLife: row.secondLife },
  bedAreaSquareCentimetres: row.bedAreaCm2,
  logWoodCode: row.logWoodCode,
  logDiameterMillimetres: row.logDiameterMm,
  logLengthMillimetres: row.logLengthMm,
  logGreenMassGrams: row.logGreenGrams,
  contaminationAssessedOn: dayOrNull(row.contaminationAssessedOn),
  yieldAssessedOn: dayOrNull(row.yieldAssessedOn),
  closedOn: dayOrNull(row.closedOn),
  ...{ closeReason: row.closeReason, spentDestination: row.spentDestination, noHarvest: row.noHarvest },
  note: row.note,
  voided: voidedOf(row),
});

export const batches = resource({
  name: 'batches',
  one: 'a batch',
  about: 'Units inoculated on one day with one species at one site, as started and corrected since.',
  schema: batchSchema,
  filters: {
    site: id,
    species: id,
    state: z.enum(['open', 'closed']),
    code: z
      .string()
      .max(40)
      .regex(/^[^\p{Cc}]*$/u),
  },
  rows: ({ db }, where, page, { site, species, state, code }) =>
    db.batch.findMany({
      where: {
        ...where,
        ...(site === undefined ? {} : { siteId: site }),
        ...(species === undefined ? {} : { speciesId: species }),
        ...(state === undefined ? {} : { closedOn: state === 'open' ? null : { not: null } }),
        ...(code === undefined ? {} : { code }),
      },
      include: batchInclude,
      ...page,
    }),
  tell: tellBatch,
});
