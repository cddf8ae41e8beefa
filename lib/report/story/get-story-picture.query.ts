import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** The picture of a story, JPEG, for whoever may read its report; none once a consent was withdrawn. */
export async function getStoryPicture(
  { db }: ReadContext,
  storyId: string,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const row = await db.reportPicture.findFirst({
    where: { id: storyId, story: { voidedAt: null, pictureAlt: { not: null } } },
    select: { image: true },
  });
  return row?.image;
}
