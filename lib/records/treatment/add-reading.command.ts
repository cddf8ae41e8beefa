import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { questionPh } from '@/lib/growing/question-ph';
import { momentInstant } from '../fields/moment-instant';
import { methodWindow } from './method-window';
import { openRun } from './open-run';
import { isFuture } from './prepare-treatment';
import type { addReadingInput } from './treatment.input';

/** Adds a reading of temperature, pH or both; now where no time is given. A pH above saturated lime water at that temperature is asked about. */
export async function addReading(
  context: WriteContext,
  input: z.output<typeof addReadingInput>,
): Promise<Result<{ id: string; treatmentRunId: string }>> {
  const { db, actor, origin, now, confirmed } = context;
  const { treatmentRunId } = input;
  const id = input.id ?? newId();
  if (await db.treatmentReading.findFirst({ where: { id, createdById: actor.personId } }))
    return ok({ id, treatmentRunId });
  const run = await openRun(context, treatmentRunId);
  if (!run) return notFound;
  if (input.celsius === null && input.ph === null) return invalid('celsius', 'reading-empty');
  const readAt = input.readAt === null ? now : momentInstant(input.readAt, run.site.timeZone);
  if (isFuture(readAt, now)) return invalid('readAt', 'future-date');
  if (readAt < run.startedAt) return invalid('readAt', 'ends-before-start');
  const window = methodWindow(run.method);
  if (input.ph !== null && window?.kind === 'lime') {
    const question = questionPh(input.ph, input.celsius, window);
    if (
      (question?.code === 'above-saturation' || question?.code === 'very-high') &&
      !confirmed.has('ph-above-saturation')
    ) {
      return {
        kind: 'confirm',
        questions: [{ field: 'ph', code: 'ph-above-saturation', values: { ph: input.ph } }],
      };
    }
  }
  await db.treatmentReading.create({
    data: {
      networkId: actor.networkId,
      id,
      treatmentRunId,
      siteId: run.siteId,
      readAt,
      place: input.place ?? (window?.kind === 'heat' ? 'load_middle' : 'water'),
      celsius: input.celsius,
      ph: input.ph,
      origin,
      createdById: actor.personId,
    },
  });
  return ok({ id, treatmentRunId });
}
