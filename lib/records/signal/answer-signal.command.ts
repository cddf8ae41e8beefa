import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { answerSignalInput } from './answer-signal.input';

/**
 * Writes down that a coordinator has seen a signal of the watch list, or what explains it. One row a signal; a later answer
 * replaces the earlier one, which stays in the history.
 */
export async function answerSignal(
  { db, actor, origin, now }: WriteContext,
  { signalKey, answer, words }: z.output<typeof answerSignalInput>,
): Promise<Result<{ signalKey: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const said = {
    answer,
    words: answer === 'open' ? null : words,
    answeredAt: now,
    answeredById: actor.personId,
  };
  const { count } = await db.signalAnswer.updateMany({ where: { signalKey, voidedAt: null }, data: said });
  if (count === 0) {
    await db.signalAnswer.create({
      data: {
        networkId: actor.networkId,
        id: newId(),
        signalKey,
        ...said,
        origin,
        createdById: actor.personId,
      },
    });
  }
  return ok({ signalKey });
}
