import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { endTrialInput } from './trial.input';

/** Ends a trial: from now on the list takes nothing more, and the planned analysis can be read. */
export async function endTrial(
  { db, actor, now, confirmed }: WriteContext,
  { id, endNote }: z.output<typeof endTrialInput>,
): Promise<Result<{ id: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const trial = await db.trial.findFirst({ where: { id, voidedAt: null } });
  if (!trial) return notFound;
  if (trial.startedAt === null) return invalid('', 'trial-not-started');
  if (trial.endedAt !== null) return ok({ id });
  const open = await db.trialSlot.count({ where: { trialId: id, batchId: null } });
  if (open > 0 && !confirmed.has('trial-ends-early'))
    return {
      kind: 'confirm',
      questions: [{ field: 'endNote', code: 'trial-ends-early', values: { count: open } }],
    };
  await db.trial.updateMany({ where: { id, endedAt: null }, data: { endedAt: now, endNote } });
  return ok({ id });
}
