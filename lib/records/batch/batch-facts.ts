import { otherSpeciesWindow } from '@/lib/growing/assessment-window-defaults';
import type { BatchFacts } from '@/lib/growing/derive-batch';
import type { BatchInput } from './batch-fields.input';
import type { BatchLookups } from './batch-lookups';
import { filledGramsOf } from './check-batch';
import { lotMoisture } from './lot-moisture';
import type { ResolvedBatch } from './resolve-batch';

/** Puts what was typed and what was looked up together for the derivation. */
export function batchFacts(input: BatchInput, resolved: ResolvedBatch, found: BatchLookups): BatchFacts {
  const { containerKind } = input;
  const isLog = containerKind === 'log';
  return {
    containerKind,
    unitCount: input.unitCount,
    inoculatedOn: input.inoculatedOn,
    components: resolved.components.map((component) => ({
      role: component.input.role,
      grams: component.input.mass,
      massStage: component.input.massStage,
      materialId: component.lot.materialId,
      methodId: component.method.id,
      methodKind: component.method.kind,
      asReceived: lotMoisture(component.lot),
      drainedPercent:
        found.drained
          .find((row) => row.materialId === component.lot.materialId && row.methodId === component.method.id)
          ?.drainedMoisturePercent.toNumber() ?? null,
    })),
    spawnGrams: resolved.spawn.map(({ grams }) => grams),
    filledGrams: filledGramsOf(input) ?? null,
    moisture: { source: input.moistureSource, percent: input.moisturePercent },
    log: {
      woodCode: isLog ? input.logWoodCode : null,
      diameterMm: isLog ? input.logDiameter : null,
      lengthMm: isLog ? input.logLength : null,
      greenGrams: isLog ? input.logGreenMass : null,
    },
    window: found.window ?? otherSpeciesWindow[containerKind],
  };
}
