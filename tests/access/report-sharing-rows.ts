import { z } from 'zod';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { addPhoto } from '@/lib/records/photo/add-photo.command';
import { addPhotoInput } from '@/lib/records/photo/photo.input';
import { publishReportInput } from '@/lib/report/build-report.input';
import { makeLinkInput, withdrawLinkInput } from '@/lib/report/link/link.input';
import { listLinks } from '@/lib/report/link/list-links.query';
import { makeLink } from '@/lib/report/link/make-link.command';
import { withdrawLink } from '@/lib/report/link/withdraw-link.command';
import { publishReport } from '@/lib/report/publish-report.command';
import { addStory } from '@/lib/report/story/add-story.command';
import { dropStory } from '@/lib/report/story/drop-story.command';
import { getStoryPicture } from '@/lib/report/story/get-story-picture.query';
import { listPhotosToChoose } from '@/lib/report/story/list-photos-to-choose.query';
import { addStoryInput, dropStoryInput } from '@/lib/report/story/story.input';
import { withdrawConsent } from '@/lib/report/story/withdraw-consent.command';
import { withdrawConsentInput } from '@/lib/report/story/withdraw-consent.input';
import { command, type OperationRow } from './operation-rows';
import { anotherDraft, anotherPublished } from './report-rows';
import { arrange, type World } from './world';

const bytes = z.instanceof(Uint8Array<ArrayBuffer>);
const storySchema = addStoryInput.extend({ image: bytes.optional() });
const photoSchema = addPhotoInput.extend({
  photo: z.object({ image: bytes, thumbnail: bytes, widthPx: z.number(), heightPx: z.number() }),
  outside: z.boolean(),
});

const aPhoto = async (world: World): Promise<string> => {
  const id = newId();
  const photo = { image: Uint8Array.of(1, 2), thumbnail: Uint8Array.of(1), widthPx: 4, heightPx: 3 };
  const picture = { id, batchId: world.batch, outside: false, photo };
  await arrange(world.people.coordinator, photoSchema, addPhoto, picture);
  return id;
};

const story = (reportId: string) => ({
  reportId,
  title: 'Straw that was burnt before',
  words: 'A neighbour now brings it to the shed.',
  consent: 'yes',
  consentOn: '2026-07-01',
});

async function aStory(world: World, report: string): Promise<string> {
  const photoId = await aPhoto(world);
  const pictured = { ...story(report), photoId, pictureAlt: 'Straw in nets', image: Uint8Array.of(1, 2) };
  return (await arrange(world.people.coordinator, storySchema, addStory, pictured)).id;
}

const aLink = (reportId: string) => ({
  reportId,
  forWhom: 'A foundation',
  language: 'en',
  lastDay: '2026-08-01',
});

const oneId = z.object({ id: z.string() });
const idOf = (prepared: unknown) => oneId.parse(prepared).id;

/** Stories of a report, their pictures, and links that open it without an account. */
export const reportSharingRows: readonly OperationRow[] = [
  command('report/story/add-story.command', 'y----', storySchema, addStory, async (w) =>
    story(await anotherDraft(w)),
  ),
  command('report/story/drop-story.command', 'y----', dropStoryInput, dropStory, async (w) => ({
    id: await aStory(w, await anotherDraft(w)),
  })),
  command(
    'report/story/withdraw-consent.command',
    'y----',
    withdrawConsentInput,
    withdrawConsent,
    async (w) => ({
      id: await aStory(w, await anotherDraft(w)),
      part: 'picture',
      withdrawnOn: '2026-07-10',
    }),
  ),
  {
    file: 'report/story/get-story-picture.query',
    may: 'yyyy-',
    prepare: async (world) => {
      const report = await anotherDraft(world);
      const id = await aStory(world, report);
      await arrange(world.people.coordinator, publishReportInput, publishReport, { id: report });
      return { id };
    },
    attempt: async (_world, actor, prepared) =>
      (await readAs(actor, (context) => getStoryPicture(context, idOf(prepared)))) !== undefined,
  },
  {
    file: 'report/story/list-photos-to-choose.query',
    may: 'y----',
    prepare: async (world) => ({ id: await aPhoto(world) }),
    attempt: async (_world, actor, prepared) =>
      (await readAs(actor, listPhotosToChoose)).some(({ id }) => id === idOf(prepared)),
  },
  command('report/link/make-link.command', 'y----', makeLinkInput, makeLink, async (w) =>
    aLink(await anotherPublished(w)),
  ),
  command('report/link/withdraw-link.command', 'y----', withdrawLinkInput, withdrawLink, async (w) => {
    const link = aLink(await anotherPublished(w));
    return { id: (await arrange(w.people.coordinator, makeLinkInput, makeLink, link)).id };
  }),
  {
    file: 'report/link/list-links.query',
    may: 'y----',
    prepare: async (world) => {
      const report = await anotherPublished(world);
      await arrange(world.people.coordinator, makeLinkInput, makeLink, aLink(report));
      return { id: report };
    },
    attempt: async (_world, actor, prepared) =>
      (await readAs(actor, (context) => listLinks(context, idOf(prepared)))).length > 0,
  },
];
