import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { buildTrialContent } from './build-trial-content';
import type { trialResultInput } from './trial-result.input';

/** Publishes an ended trial to the members, once and for good; corrections of records no longer reach it. */
export async function publishTrialResult(
  context: WriteContext,
  { id }: z.output<typeof trialResultInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, origin, now } = context;
  if (actor.role !== 'coordinator') return notFound;
  if ((await db.trialResult.count({ where: { trialId: id } })) > 0) return ok({ id });
  if ((await db.trial.count({ where: { id, voidedAt: null } })) === 0) return notFound;
  const content = await buildTrialContent(context, id, now);
  if (content === undefined) return invalid('', 'trial-not-ended');
  await db.trialResult.create({
    data: {
      networkId: actor.networkId,
      id: newId(),
      trialId: id,
      title: content.title,
      content: JSON.parse(JSON.stringify(content)),
      publishedAt: now,
      origin,
      createdById: actor.personId,
    },
  });
  return ok({ id });
}
