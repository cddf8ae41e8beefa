import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import { checkTrialPlan } from './check-trial-plan';
import { planColumns, writePlanParts } from './plan-columns';
import type { planTrialInput } from './trial.input';

/** Writes down a trial that can still be changed: question, outcome, arms, sites and what its size rests on. */
export async function planTrial(
  context: WriteContext,
  input: z.output<typeof planTrialInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, origin } = context;
  if (actor.role !== 'coordinator') return notFound;
  const id = input.id ?? newId();
  if (await db.trial.findFirst({ where: { id, createdById: actor.personId } })) return ok({ id });
  const errors = await checkTrialPlan(context, input);
  if (errors.length > 0) return { kind: 'invalid', errors };
  await db.trial.create({
    data: { networkId: actor.networkId, id, ...planColumns(input), origin, createdById: actor.personId },
  });
  await writePlanParts(context, id, input);
  return ok({ id });
}
