import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { checkTrialPlan } from './check-trial-plan';
import { planColumns, writePlanParts } from './plan-columns';
import type { correctTrialInput } from './trial.input';

/** Changes a plan that has not started; a started one is refused here and by the database. */
export async function correctTrial(
  context: WriteContext,
  input: z.output<typeof correctTrialInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, now } = context;
  if (actor.role !== 'coordinator') return notFound;
  const { id, revision, reason } = input;
  const trial = await db.trial.findFirst({ where: { id, voidedAt: null } });
  if (!trial) return notFound;
  if (trial.startedAt !== null) return invalid('', 'trial-started');
  const errors = await checkTrialPlan(context, input);
  if (errors.length > 0) return { kind: 'invalid', errors };
  const { count } = await db.trial.updateMany({
    where: { id, revision, voidedAt: null },
    data: planColumns(input),
  });
  if (count === 0) return { kind: 'conflict', current: trial.revision };
  const replaced = { where: { trialId: id, voidedAt: null }, data: { voidedAt: now, voidReason: reason } };
  await db.trialArm.updateMany(replaced);
  await db.trialSite.updateMany(replaced);
  await writePlanParts(context, id, input);
  return ok({ id });
}
