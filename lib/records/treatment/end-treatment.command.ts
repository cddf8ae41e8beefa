import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { todayInZone } from '@/lib/growing/calendar-date';
import { momentInstant } from '../fields/moment-instant';
import { openRun } from './open-run';
import { isFuture } from './prepare-treatment';
import type { endTreatmentInput } from './treatment.input';

/** The load is out: heat taken away, lifted from the lime bath or drained. At a site that has left, by then at the latest. */
export async function endTreatment(
  context: WriteContext,
  input: z.output<typeof endTreatmentInput>,
): Promise<Result<{ id: string }>> {
  const run = await openRun(context, input.id);
  if (!run) return notFound;
  const endedAt = momentInstant(input.endedAt, run.site.timeZone);
  if (isFuture(endedAt, context.now)) return invalid('endedAt', 'future-date');
  if (endedAt < run.startedAt) return invalid('endedAt', 'ends-before-start');
  const { leftAt, timeZone } = run.site;
  if (leftAt && endedAt > leftAt) return invalid('endedAt', 'after', { date: todayInZone(timeZone, leftAt) });
  const { count } = await context.db.treatmentRun.updateMany({
    where: { id: input.id, revision: input.revision, voidedAt: null },
    data: {
      endedAt,
      ...(input.loadCelsiusAtSpawning === null ? {} : { loadCelsiusAtSpawning: input.loadCelsiusAtSpawning }),
    },
  });
  return count === 1 ? ok({ id: input.id }) : { kind: 'conflict', current: run.revision };
}
