import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { FieldError } from '@/lib/base/result';
import type { Batch } from '@/lib/database/generated/client';
import { asCalendarDate } from '../fields/stored-date';
import type { BatchInput } from './batch-fields.input';
import { batchUnits } from './batch-units';
import { recordedSpan } from './recorded-span';

/** A correction must leave room for what is already recorded about the batch. */
export async function checkCorrection(
  context: ReadContext,
  batch: Batch,
  input: BatchInput,
): Promise<FieldError[]> {
  const errors: FieldError[] = [];
  const units = await batchUnits(context, batch);
  const named = Math.max(0, ...units.namedContaminated, ...units.namedLost);
  const least = Math.max(units.contaminated, units.lost, units.lost + units.moved, named);
  if (input.unitCount < least)
    errors.push({ field: 'unitCount', code: 'fewer-than-recorded', values: { least } });
  const span = await recordedSpan(context, batch.id);
  const until = span?.first ?? (batch.closedOn ? asCalendarDate(batch.closedOn) : undefined);
  if (until !== undefined && input.inoculatedOn > until)
    errors.push({ field: 'inoculatedOn', code: 'after-first-record', values: { date: until } });
  if (input.siteId !== batch.siteId) {
    const lines = await context.db.weighingLine.count({ where: { batchId: batch.id } });
    if (lines > 0) errors.push({ field: 'siteId', code: 'site-has-weighings' });
  }
  return errors;
}
