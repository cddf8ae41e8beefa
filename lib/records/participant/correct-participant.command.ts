import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { todayInZone } from '@/lib/growing/calendar-date';
import { consentDates } from './consent-dates';
import type { correctParticipantInput } from './participant.input';
import { askSameName } from './same-name';

/** Puts a name right, and writes down consents given or withdrawn since. */
export async function correctParticipant(
  context: WriteContext,
  input: z.output<typeof correctParticipantInput>,
): Promise<Result<{ id: string }>> {
  const { db, now } = context;
  const { id, revision, name, consents, agreedOn } = input;
  const existing = await db.participant.findFirst({
    where: { id, voidedAt: null, erasedAt: null },
    include: { site: { select: { timeZone: true } } },
  });
  if (!existing) return notFound;
  const dates = consentDates(existing, {
    consents,
    agreedOn,
    today: todayInZone(existing.site.timeZone, now),
  });
  if (dates.kind !== 'ok') return dates;
  const question = await askSameName(context, { id, siteId: existing.siteId, name });
  if (question) return question;
  const { count } = await db.participant.updateMany({
    where: { id, revision, voidedAt: null, erasedAt: null },
    data: dates.value,
  });
  if (count === 0) return { kind: 'conflict', current: existing.revision };
  await db.participantContact.updateMany({ where: { id }, data: { name } });
  return ok({ id });
}
