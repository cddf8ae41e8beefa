import type { Prisma } from '@/lib/database/generated/client';
import { asDate } from '../fields/stored-date';
import type { BatchInput } from './batch-fields.input';
import type { PreparedBatch } from './prepare-batch';

/** What was typed, kept beside the grams it was read as. */
function enteredOf({ filledMass, filledWith }: BatchInput): Prisma.InputJsonObject | null {
  if (filledMass === null) return null;
  return {
    filledMass: filledMass.entered ?? { grams: filledMass.grams },
    filledWith: filledWith ?? 'substrate_only',
  };
}

/** The columns of a batch that starting and correcting write alike. */
export function batchColumns(input: BatchInput, { derived }: PreparedBatch, personId: string) {
  const isLog = input.containerKind === 'log';
  const { contaminationAssessedOn, yieldAssessedOn, ...worked } = derived;
  const entered = enteredOf(input);
  return {
    siteId: input.siteId,
    speciesId: input.speciesId,
    containerKind: input.containerKind,
    unitCount: input.unitCount,
    inoculatedOn: asDate(input.inoculatedOn),
    startedById: input.startedById ?? personId,
    ...worked,
    contaminationAssessedOn: asDate(contaminationAssessedOn),
    yieldAssessedOn: asDate(yieldAssessedOn),
    bedAreaCm2: input.containerKind === 'bed' ? input.bedArea : null,
    logWoodCode: isLog ? input.logWoodCode : null,
    logDiameterMm: isLog ? input.logDiameter : null,
    logLengthMm: isLog ? input.logLength : null,
    logGreenGrams: isLog ? input.logGreenMass : null,
    note: input.note,
    ...(entered === null ? {} : { entered }),
  };
}
