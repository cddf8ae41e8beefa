import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { todayInZone } from '@/lib/growing/calendar-date';
import { asCalendarDate, asDate } from '@/lib/records/fields/stored-date';
import type { withdrawConsentInput } from './withdraw-consent.input';

const withoutPicture = { pictureAlt: null, pictureWidthPx: null, pictureHeightPx: null };

/**
 * Takes a picture, or a whole story, out of every version of a report that shows it, published ones too, because those in
 * it no longer agree. The report says that it did so and when; the picture's bytes are erased, also of a version
 * whose story was taken out while it was a draft, and figures stay as they were.
 */
export async function withdrawConsent(
  { db, actor, now }: WriteContext,
  { id, part, withdrawnOn }: z.output<typeof withdrawConsentInput>,
): Promise<Result<{ reportId: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const story = await db.reportStory.findFirst({ where: { id, voidedAt: null } });
  if (!story) return notFound;
  if (withdrawnOn > todayInZone(actor.networkTimeZone, now)) return invalid('withdrawnOn', 'future-date');
  const consentOn = asCalendarDate(story.consentOn);
  if (withdrawnOn < consentOn) return invalid('withdrawnOn', 'before-consent', { date: consentOn });
  if (part === 'picture' && story.pictureAlt === null && story.withdrawnPart === null)
    return invalid('part', 'no-picture');
  const first = story.firstId ?? story.id;
  const everyVersion = await db.reportStory.findMany({
    where: { OR: [{ id: first }, { firstId: first }] },
  });
  const told = everyVersion.filter(
    ({ voidedAt, withdrawnPart }) => voidedAt === null && withdrawnPart !== part && withdrawnPart !== 'story',
  );
  for (const one of told)
    await db.reportStory.updateMany({
      where: { id: one.id },
      data: {
        ...withoutPicture,
        ...(part === 'story' ? { title: '', words: '' } : {}),
        withdrawnPart: part,
        consentWithdrawnOn: asDate(withdrawnOn),
      },
    });
  await db.reportPicture.updateMany({
    where: { id: { in: everyVersion.map((one) => one.id) } },
    data: { image: new Uint8Array() },
  });
  return ok({ reportId: story.reportId });
}
