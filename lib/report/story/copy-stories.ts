import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';

/**
 * Copies the stories of a report into its next version, pictures and the day of the consent with them. A story whose
 * consent was withdrawn is not told again, and one that lost its picture goes on without.
 */
export async function copyStories(
  { db, actor, origin }: WriteContext,
  fromReport: string,
  toReport: string,
): Promise<void> {
  const stories = await db.reportStory.findMany({
    where: {
      reportId: fromReport,
      voidedAt: null,
      OR: [{ withdrawnPart: null }, { withdrawnPart: 'picture' }],
    },
    include: { picture: { select: { image: true } } },
    orderBy: { id: 'asc' },
  });
  for (const story of stories) {
    const { title, words, pictureAlt, pictureWidthPx, pictureHeightPx, consentOn, picture } = story;
    const id = newId();
    await db.reportStory.create({
      data: {
        networkId: actor.networkId,
        id,
        reportId: toReport,
        firstId: story.firstId ?? story.id,
        ...{ title, words, pictureAlt, pictureWidthPx, pictureHeightPx, consentOn },
        origin,
        createdById: actor.personId,
      },
    });
    if (picture && pictureAlt !== null)
      await db.reportPicture.create({ data: { networkId: actor.networkId, id, image: picture.image } });
  }
}
