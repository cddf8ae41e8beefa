import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { noConsent } from './consent-dates';
import type { eraseParticipantInput } from './participant.input';

/** Erases a participant's name for good and withdraws every consent; that somebody came to a training stays. */
export async function eraseParticipant(
  { db, now }: WriteContext,
  { id, revision }: z.output<typeof eraseParticipantInput>,
): Promise<Result<{ id: string }>> {
  const existing = await db.participant.findFirst({ where: { id, voidedAt: null } });
  if (!existing) return notFound;
  if (existing.erasedAt !== null) return ok({ id });
  const { count } = await db.participant.updateMany({
    where: { id, revision, voidedAt: null },
    data: { ...noConsent, erasedAt: now },
  });
  if (count === 0) return { kind: 'conflict', current: existing.revision };
  await db.participantContact.updateMany({ where: { id }, data: { name: null } });
  return ok({ id });
}
