import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { type FieldError, ok, type Result } from '@/lib/base/result';
import { batchUnits } from '../batch/batch-units';
import { lockBatch } from '../batch/lock-batch';
import { openBatch } from '../batch/open-batch';
import { asCalendarDate } from '../fields/stored-date';
import { descendsFrom } from './descends-from';
import type { SourceInput } from './second-life.input';

export type CheckedSource = { readonly batchId: string; readonly siteId: string; readonly units: number };

type Asked = {
  readonly sources: readonly SourceInput[];
  readonly inoculatedOn: string;
  readonly speciesId: string;
};

/** Units that a second life already has, by source: who corrects it may not see the site they came from. */
async function linkedBefore({ db }: WriteContext, batchId: string | null): Promise<CheckedSource[]> {
  if (batchId === null) return [];
  const rows = await db.secondLifeSource.findMany({ where: { batchId, voidedAt: null } });
  return rows.map(({ sourceBatchId, sourceSiteId, unitsMoved }) => ({
    batchId: sourceBatchId,
    siteId: sourceSiteId,
    units: unitsMoved,
  }));
}

/**
 * Each source is a batch that the actor may see, of the same species, started before, with enough units standing.
 * `without` is a second life being corrected: its own units count as standing, none of its own later lives can be
 * its source, and sources from sites that the actor cannot see stay as they were.
 */
export async function checkSources(
  context: WriteContext,
  { sources, inoculatedOn, speciesId }: Asked,
  without: string | null,
): Promise<Result<CheckedSource[]>> {
  const errors: FieldError[] = [];
  const checked: CheckedSource[] = [];
  const before = await linkedBefore(context, without);
  if (sources.length === 0) errors.push({ field: 'sources.0.units', code: 'missing' });
  for (const [index, { batchId, units }] of sources.entries()) {
    const refuse = (name: string, code: string, values?: FieldError['values']) =>
      errors.push({ field: `sources.${index}.${name}`, code, ...(values ? { values } : {}) });
    if (sources.findIndex((source) => source.batchId === batchId) < index) refuse('batchId', 'chosen-twice');
    await lockBatch(context, batchId);
    const batch = batchId === without ? undefined : await openBatch(context, batchId);
    if (!batch) {
      const kept = before.find((one) => one.batchId === batchId && one.units === units);
      if (kept) checked.push(kept);
      else refuse('batchId', 'not-found');
      continue;
    }
    const startedOn = asCalendarDate(batch.inoculatedOn);
    const { live } = await batchUnits(context, batch, without);
    if (batch.speciesId !== speciesId) refuse('batchId', 'source-other-species');
    if (without !== null && (await descendsFrom(context, batchId, without)))
      refuse('batchId', 'comes-from-itself');
    if (inoculatedOn < startedOn)
      errors.push({ field: 'inoculatedOn', code: 'before-inoculation', values: { date: startedOn } });
    if (units > live) refuse('units', 'too-many-units', { units, available: live });
    checked.push({ batchId, siteId: batch.siteId, units });
  }
  return errors.length > 0 ? { kind: 'invalid', errors } : ok(checked);
}
