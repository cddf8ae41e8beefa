import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { hashToken, newToken } from '@/lib/access/token';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import { instantInZone } from '@/lib/growing/instant-in-zone';
import type { makeLinkInput } from './link.input';

/** The longest that a link stays open: a programme year and its reporting. */
export const longestDays = 366;

/** Makes a link to a published report. The token is answered once and stored as its hash alone. */
export async function makeLink(
  { db, actor, now }: WriteContext,
  input: z.output<typeof makeLinkInput>,
): Promise<Result<{ id: string; token: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const { reportId, forWhom, language, lastDay } = input;
  const report = await db.report.findFirst({
    where: { id: reportId, voidedAt: null, publishedAt: { not: null } },
  });
  if (!report) return notFound;
  const today = todayInZone(actor.networkTimeZone, now);
  if (lastDay < today) return invalid('lastDay', 'past-date');
  if (lastDay > addDays(today, longestDays)) return invalid('lastDay', 'too-far', { days: longestDays });
  const token = newToken();
  const id = newId();
  await db.reportLink.create({
    data: {
      networkId: actor.networkId,
      id,
      reportId,
      tokenHash: hashToken(token),
      forWhom,
      language,
      expiresAt: instantInZone(addDays(lastDay, 1), '00:00', actor.networkTimeZone),
      createdAt: now,
      createdById: actor.personId,
    },
  });
  return ok({ id, token });
}
