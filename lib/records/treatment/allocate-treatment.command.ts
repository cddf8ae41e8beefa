import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import { openRun } from './open-run';
import type { allocateTreatmentInput } from './treatment.input';

/** Lets another site draw on a run: treated material that was carried there. For the coordinator. */
export async function allocateTreatment(
  context: WriteContext,
  input: z.output<typeof allocateTreatmentInput>,
): Promise<Result<{ id: string; treatmentRunId: string }>> {
  const { db, actor, origin } = context;
  if (actor.role !== 'coordinator') return notFound;
  const run = await openRun(context, input.treatmentRunId);
  const site = await db.site.findFirst({ where: { id: input.siteId, voidedAt: null } });
  if (!run || !site) return notFound;
  const { treatmentRunId, siteId } = input;
  const there = await db.treatmentAllocation.findFirst({ where: { treatmentRunId, siteId } });
  if (there) {
    await db.treatmentAllocation.updateMany({
      where: { id: there.id },
      data: { grams: input.mass, voidedAt: null, voidReason: null },
    });
    return ok({ id: there.id, treatmentRunId });
  }
  const id = input.id ?? newId();
  await db.treatmentAllocation.create({
    data: {
      networkId: actor.networkId,
      id,
      treatmentRunId,
      siteId,
      grams: input.mass,
      origin,
      createdById: actor.personId,
    },
  });
  return ok({ id, treatmentRunId });
}
