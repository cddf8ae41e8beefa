import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { openRun } from './open-run';
import { prepareTreatment } from './prepare-treatment';
import type { correctTreatmentInput } from './treatment.input';

/** Puts a run right. Its method and site stay once batches were filled from it. */
export async function correctTreatment(
  context: WriteContext,
  input: z.output<typeof correctTreatmentInput>,
): Promise<Result<{ id: string }>> {
  const { db } = context;
  const run = await openRun(context, input.id);
  if (!run) return notFound;
  const prepared = await prepareTreatment(context, input);
  if (prepared.kind !== 'ok') return prepared;
  const used = await db.batchComponent.count({
    where: { treatmentRunId: run.id, voidedAt: null, batch: { voidedAt: null } },
  });
  if (used > 0 && input.methodId !== run.methodId)
    return invalid('methodId', 'still-in-use', { count: used });
  if ((used > 0 || run.readings.length > 0) && input.siteId !== run.siteId) {
    return invalid('siteId', 'still-in-use', { count: used + run.readings.length });
  }
  const code = input.code ?? run.code;
  if (await db.treatmentRun.findFirst({ where: { code, id: { not: run.id } } }))
    return invalid('code', 'code-taken', { code });
  const { count } = await db.treatmentRun.updateMany({
    where: { id: input.id, revision: input.revision, voidedAt: null },
    data: { code, ...prepared.value },
  });
  return count === 1 ? ok({ id: input.id }) : { kind: 'conflict', current: run.revision };
}
