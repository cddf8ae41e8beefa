import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** The picture of a story, JPEG, for whoever may read its report. */
export async function getStoryPicture(
  { db }: ReadContext,
  storyId: string,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const row = await db.reportPicture.findFirst({
    where: { id: storyId, story: { voidedAt: null } },
    select: { image: true },
  });
  return row?.image;
}
