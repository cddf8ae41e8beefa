import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';

/** Copies the stories of a report into its next version, pictures and the day of the consent with them. */
export async function copyStories(
  { db, actor, origin }: WriteContext,
  fromReport: string,
  toReport: string,
): Promise<void> {
  const stories = await db.reportStory.findMany({
    where: { reportId: fromReport, voidedAt: null },
    include: { picture: { select: { image: true } } },
    orderBy: { id: 'asc' },
  });
  for (const { title, words, pictureAlt, pictureWidthPx, pictureHeightPx, consentOn, picture } of stories) {
    const id = newId();
    await db.reportStory.create({
      data: {
        networkId: actor.networkId,
        id,
        reportId: toReport,
        ...{ title, words, pictureAlt, pictureWidthPx, pictureHeightPx, consentOn },
        origin,
        createdById: actor.personId,
      },
    });
    if (picture)
      await db.reportPicture.create({ data: { networkId: actor.networkId, id, image: picture.image } });
  }
}
