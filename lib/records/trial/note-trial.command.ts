import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { noteTrialInput } from './trial.input';

/** Adds a dated note to a started trial: what is done otherwise from now on, and why. Notes stay as they were written. */
export async function noteTrial(
  { db, actor, origin, now }: WriteContext,
  input: z.output<typeof noteTrialInput>,
): Promise<Result<{ id: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const { trialId, note } = input;
  const trial = await db.trial.findFirst({ where: { id: trialId, voidedAt: null } });
  if (!trial) return notFound;
  if (trial.startedAt === null) return invalid('', 'trial-not-started');
  const id = input.id ?? newId();
  if (await db.trialNote.findFirst({ where: { id, createdById: actor.personId } }))
    return ok({ id: trialId });
  await db.trialNote.create({
    data: {
      networkId: actor.networkId,
      id,
      trialId,
      note,
      notedAt: now,
      origin,
      createdById: actor.personId,
    },
  });
  return ok({ id: trialId });
}
