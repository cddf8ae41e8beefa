import { otherSpeciesWindow } from '@/lib/growing/assessment-window-defaults';
import type { KnownMoisture } from '@/lib/growing/batch-dry-mass';
import type { BatchFacts } from '@/lib/growing/derive-batch';
import type { BatchInput } from './batch-fields.input';
import type { BatchLookups } from './batch-lookups';
import { filledGramsOf } from './check-batch';
import type { ResolvedBatch, ResolvedComponent } from './resolve-batch';

/** Moisture of a lot as it came: its own, else its material's default, which is an assumption. */
function asReceived({ lot }: ResolvedComponent): KnownMoisture {
  if (lot.moisturePercent !== null)
    return { percent: lot.moisturePercent.toNumber(), source: lot.moistureSource };
  const usual = lot.material.receivedMoisturePercent;
  return usual === null
    ? { percent: null, source: 'none' }
    : { percent: usual.toNumber(), source: 'assumed' };
}

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
      asReceived: asReceived(component),
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
