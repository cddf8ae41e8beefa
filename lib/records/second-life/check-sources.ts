import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { type FieldError, ok, type Result } from '@/lib/base/result';
import { batchUnits } from '../batch/batch-units';
import { lockBatch } from '../batch/lock-batch';
import { openBatch } from '../batch/open-batch';
import { asCalendarDate } from '../fields/stored-date';
import type { SourceInput } from './second-life.input';

export type CheckedSource = { readonly batchId: string; readonly siteId: string; readonly units: number };

/** Each source is a batch of one's own, started before, with enough units standing. `without` is a second life being corrected. */
export async function checkSources(
  context: WriteContext,
  sources: readonly SourceInput[],
  inoculatedOn: string,
  without: string | null,
): Promise<Result<CheckedSource[]>> {
  const errors: FieldError[] = [];
  const checked: CheckedSource[] = [];
  if (sources.length === 0) errors.push({ field: 'sources.0.units', code: 'missing' });
  for (const [index, { batchId, units }] of sources.entries()) {
    const refuse = (name: string, code: string, values?: FieldError['values']) =>
      errors.push({ field: `sources.${index}.${name}`, code, ...(values ? { values } : {}) });
    if (sources.findIndex((source) => source.batchId === batchId) < index) refuse('batchId', 'chosen-twice');
    await lockBatch(context, batchId);
    const batch = batchId === without ? undefined : await openBatch(context, batchId);
    if (!batch) {
      refuse('batchId', 'not-found');
      continue;
    }
    const startedOn = asCalendarDate(batch.inoculatedOn);
    const { live } = await batchUnits(context, batch, without);
    if (inoculatedOn < startedOn)
      errors.push({ field: 'inoculatedOn', code: 'before-inoculation', values: { date: startedOn } });
    if (units > live) refuse('units', 'too-many-units', { units, available: live });
    checked.push({ batchId, siteId: batch.siteId, units });
  }
  return errors.length > 0 ? { kind: 'invalid', errors } : ok(checked);
}
