import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import { judgeReading } from './judge-reading';
import { openRun } from './open-run';
import type { addReadingInput } from './treatment.input';

/** Adds a reading of temperature, pH or both; now where no time is given. */
export async function addReading(
  context: WriteContext,
  input: z.output<typeof addReadingInput>,
): Promise<Result<{ id: string; treatmentRunId: string }>> {
  const { db, actor, origin } = context;
  const { treatmentRunId } = input;
  const id = input.id ?? newId();
  if (await db.treatmentReading.findFirst({ where: { id, createdById: actor.personId } }))
    return ok({ id, treatmentRunId });
  const run = await openRun(context, treatmentRunId);
  if (!run) return notFound;
  const reading = judgeReading(context, input, run);
  if (reading.kind !== 'ok') return reading;
  await db.treatmentReading.create({
    data: {
      networkId: actor.networkId,
      ...{ id, treatmentRunId, siteId: run.siteId, ...reading.value },
      ...{ origin, createdById: actor.personId },
    },
  });
  return ok({ id, treatmentRunId });
}
