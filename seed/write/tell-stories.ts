import { z } from 'zod';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { addDays } from '@/lib/growing/calendar-date';
import { getPhoto } from '@/lib/records/photo/get-photo.query';
import { addStory } from '@/lib/report/story/add-story.command';
import { addStoryInput } from '@/lib/report/story/story.input';
import { inOneGo } from './in-one-go';

const withImage = addStoryInput.extend({ image: z.instanceof(Uint8Array<ArrayBuffer>).optional() });

/** The first picture of the network, drawn for the demo. */
async function firstPicture(coordinator: Actor) {
  return readAs(coordinator, async (context) => {
    const photo = await context.db.photo.findFirst({ where: { voidedAt: null }, orderBy: { id: 'asc' } });
    const found = photo === null ? undefined : await getPhoto(context, photo.id, 'full');
    return photo !== null && found?.kind === 'here' ? { photoId: photo.id, image: found.image } : {};
  });
}

/** Tells two invented stories in a report that is not published yet, one with a picture. */
export async function tellStories(coordinator: Actor, reportId: string, today: string): Promise<void> {
  const consent = { consent: 'yes', consentOn: addDays(today, -20) };
  const picture = await firstPicture(coordinator);
  await inOneGo(coordinator, async (take) => {
    await take(withImage, addStory, {
      reportId,
      title: 'Straw that nobody burns any more',
      words:
        'A farm down the valley used to burn its straw each autumn. Now two sites fetch it by trailer, and some of it comes back as supper.',
      ...picture,
      ...('photoId' in picture
        ? { pictureAlt: 'A bag of straw with a cluster of brown caps growing from its side' }
        : {}),
      ...consent,
    });
    await take(withImage, addStory, {
      reportId,
      title: 'The first bucket that stayed clean',
      words:
        'After three lost buckets a garden group soaked their straw in lime for a whole night. The fourth one fruited twice, and the group now shows others how.',
      ...consent,
    });
  });
}
