import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { todayInZone } from '@/lib/growing/calendar-date';
import { asDate } from '@/lib/records/fields/stored-date';
import { lockReports } from '../lock-reports';
import type { addStoryInput } from './story.input';

/** Few and chosen: a report is read in one go. */
const mostStories = 3;

/**
 * Adds a story to a report that is not published. Its picture is copied, so that the report holds it whatever happens to
 * the photo. `image`: the chosen photo's JPEG, read by whoever runs the command: it may lie in a store outside.
 */
export async function addStory(
  context: WriteContext,
  input: z.output<typeof addStoryInput> & { readonly image?: Uint8Array<ArrayBuffer> | undefined },
): Promise<Result<{ id: string; reportId: string }>> {
  const { db, actor, origin, now } = context;
  if (actor.role !== 'coordinator') return notFound;
  // A draft that is being built anew takes its stories along; one added beside it would stay behind.
  await lockReports(context);
  const { reportId, title, words, photoId, pictureAlt, consentOn, image } = input;
  const id = input.id ?? newId();
  if (await db.reportStory.findFirst({ where: { id, reportId, createdById: actor.personId } }))
    return ok({ id, reportId });
  const open = await db.report.findFirst({ where: { id: reportId, voidedAt: null, publishedAt: null } });
  if (!open) return notFound;
  if (consentOn > todayInZone(actor.networkTimeZone, now)) return invalid('consentOn', 'future-date');
  const photo =
    photoId === null
      ? null
      : await db.photo.findFirst({
          where: { id: photoId, voidedAt: null, batch: { voidedAt: null, site: { leftAt: null } } },
        });
  if (photoId !== null && !(photo && image)) return invalid('photoId', 'not-an-option');
  if (photoId !== null && pictureAlt === null) return invalid('pictureAlt', 'missing');
  const count = await db.reportStory.count({ where: { reportId, voidedAt: null } });
  if (count >= mostStories) return invalid('', 'enough-stories', { most: mostStories });
  await db.reportStory.create({
    data: {
      networkId: actor.networkId,
      id,
      reportId,
      title,
      words,
      ...(photo && pictureAlt !== null
        ? { pictureAlt, pictureWidthPx: photo.widthPx, pictureHeightPx: photo.heightPx }
        : {}),
      consentOn: asDate(consentOn),
      origin,
      createdById: actor.personId,
    },
  });
  if (photo && image && pictureAlt !== null)
    await db.reportPicture.create({ data: { networkId: actor.networkId, id, image } });
  return ok({ id, reportId });
}
