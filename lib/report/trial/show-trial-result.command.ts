import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { trialResultInput } from './trial-result.input';

/** Lets funders read the published result of a trial. */
export async function showTrialResult(
  { db, actor, now }: WriteContext,
  { id }: z.output<typeof trialResultInput>,
): Promise<Result<{ id: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  await db.trialResult.updateMany({
    where: { trialId: id, shownToFundersAt: null },
    data: { shownToFundersAt: now },
  });
  return (await db.trialResult.count({ where: { trialId: id } })) === 1 ? ok({ id }) : notFound;
}
