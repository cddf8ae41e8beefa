import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { notFound, ok, type Result } from '@/lib/base/result';
import { todayInZone } from '@/lib/growing/calendar-date';
import { siteOfRecord } from '../programme/site-of-record';
import { consentDates, noConsent } from './consent-dates';
import { insertParticipant } from './insert-participant';
import type { addParticipantInput } from './participant.input';
import { askSameName } from './same-name';

/** Adds a person who comes to trainings, with what they agreed to. */
export async function addParticipant(
  context: WriteContext,
  input: z.output<typeof addParticipantInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, now } = context;
  const id = input.id ?? newId();
  if (await db.participant.findFirst({ where: { id, createdById: actor.personId } })) return ok({ id });
  const site = await siteOfRecord(context, input.siteId);
  if (!site) return notFound;
  const { name, consents, agreedOn, siteId } = input;
  const dates = consentDates(noConsent, { consents, agreedOn, today: todayInZone(site.timeZone, now) });
  if (dates.kind !== 'ok') return dates;
  const question = await askSameName(context, { id, siteId, name });
  if (question) return question;
  await insertParticipant(context, { id, siteId, name }, dates.value);
  return ok({ id });
}
