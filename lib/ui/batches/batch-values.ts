import type { LinkedBatch } from '@/lib/records/batch/batch-links';
import type { BatchView } from '@/lib/records/batch/batch-view';
import { dateValues } from '../form/date-values';
import { type MassReader, massValues } from '../form/mass-units';
import { areaValues, lengthValues } from '../form/measure-values';

/** The mass filled as it was typed: empty where it is only the sum of parts weighed as filled. */
function filledGrams(batch: BatchView): number | null {
  const parts = batch.components.filter(({ role }) => role !== 'additive');
  const summed =
    parts.length > 0 && parts.every(({ massStage, grams }) => massStage === 'filled' && grams !== null);
  const sum = parts.reduce((total, { grams }) => total + (grams ?? 0), 0);
  return summed && sum === batch.wetGrams ? null : batch.wetGrams;
}

/** What the form that corrects a batch begins with. */
export function batchValues(
  batch: BatchView,
  sources: readonly LinkedBatch[],
  reader: MassReader,
): Record<string, string> {
  const values: Record<string, string> = {
    id: batch.id,
    revision: String(batch.revision),
    siteId: batch.siteId,
    speciesId: batch.speciesId,
    containerKind: batch.containerKind,
    unitCount: String(batch.unitCount),
    ...dateValues('inoculatedOn', batch.inoculatedOn),
    ...massValues('filledMass', filledGrams(batch), reader),
    filledWith: 'substrate_only',
    moistureSource: batch.moistureSource,
    moisturePercent: batch.moistureSource === 'measured' ? String(batch.moisturePercent) : '',
    ...lengthValues('logDiameter', batch.logDiameterMm, reader),
    ...lengthValues('logLength', batch.logLengthMm, reader),
    ...massValues('logGreenMass', batch.logGreenGrams, reader),
    logWoodCode: batch.logWoodCode === null ? '' : String(batch.logWoodCode),
    ...areaValues('bedArea', batch.bedAreaCm2, reader),
    note: batch.note ?? '',
    way: batch.secondLifeWay ?? '',
  };
  for (const [row, one] of batch.components.entries()) {
    const name = `components.${row}`;
    Object.assign(values, massValues(`${name}.mass`, one.grams, reader), {
      [`${name}.lotId`]: one.lotId,
      [`${name}.treatment`]: one.runId === null ? `method:${one.methodId}` : `run:${one.runId}`,
      [`${name}.role`]: one.role,
      [`${name}.massStage`]: one.massStage,
    });
  }
  for (const [row, { lotId, grams }] of batch.spawn.entries())
    Object.assign(values, { [`spawn.${row}.lotId`]: lotId }, massValues(`spawn.${row}.mass`, grams, reader));
  for (const [row, { id, units }] of sources.entries())
    Object.assign(values, { [`sources.${row}.batchId`]: id, [`sources.${row}.units`]: String(units) });
  return values;
}
