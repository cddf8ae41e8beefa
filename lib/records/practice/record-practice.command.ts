import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { ok, type Result } from '@/lib/base/result';
import type { recordPracticeInput } from './practice.input';
import { preparePractice } from './prepare-practice';

/** Records a way of working that a site has taken up, and since when. */
export async function recordPractice(
  context: WriteContext,
  input: z.output<typeof recordPracticeInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, origin } = context;
  const id = input.id ?? newId();
  if (await db.adoptedPractice.findFirst({ where: { id, createdById: actor.personId } })) return ok({ id });
  const prepared = await preparePractice(context, input);
  if (prepared.kind !== 'ok') return prepared;
  const { networkId, personId: createdById } = actor;
  await db.adoptedPractice.create({
    data: { networkId, id, siteId: input.siteId, ...prepared.value, origin, createdById },
  });
  return ok({ id });
}
