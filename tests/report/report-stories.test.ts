import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { addDays } from '@/lib/growing/calendar-date';
import { addPhoto } from '@/lib/records/photo/add-photo.command';
import { addPhotoInput } from '@/lib/records/photo/photo.input';
import { getReport } from '@/lib/report/get-report.query';
import { makeLinkInput } from '@/lib/report/link/link.input';
import { makeLink } from '@/lib/report/link/make-link.command';
import { linkPicture, openLink } from '@/lib/report/link/open-link';
import { reviseReport } from '@/lib/report/revise-report.command';
import { reviseReportInput } from '@/lib/report/revise-report.input';
import { addStory } from '@/lib/report/story/add-story.command';
import { dropStory } from '@/lib/report/story/drop-story.command';
import { getStoryPicture } from '@/lib/report/story/get-story-picture.query';
import { listPhotosToChoose } from '@/lib/report/story/list-photos-to-choose.query';
import { addStoryInput, dropStoryInput } from '@/lib/report/story/story.input';
import { withdrawConsent } from '@/lib/report/story/withdraw-consent.command';
import { withdrawConsentInput } from '@/lib/report/story/withdraw-consent.input';
import { arrange, makeWorld, type World } from '../access/world';
import { testDatabase } from '../support/database';
import { type SharingDesk, sharingDesk } from './sharing-desk';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
const image = Uint8Array.of(255, 216, 1, 2, 3);
const bytes = z.instanceof(Uint8Array<ArrayBuffer>);
const storySchema = addStoryInput.extend({ image: bytes.optional() });
const photoSchema = addPhotoInput.extend({
  photo: z.object({ image: bytes, thumbnail: bytes, widthPx: z.number(), heightPx: z.number() }),
  outside: z.boolean(),
});
let world: World;
let desk: SharingDesk;
let photoId: string;

const story = (reportId: string) => ({
  reportId,
  title: 'Straw that was burnt',
  words: 'It comes to the shed now.',
  consent: 'yes',
  consentOn: addDays(desk.today, -30),
});
const pictured = (reportId: string) => ({ ...story(reportId), photoId, pictureAlt: 'Straw in nets', image });
const read = (id: string) => readAs(world.people.funder, (context) => getReport(context, id));

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
  desk = sharingDesk(world);
  photoId = newId();
  const photo = { image, thumbnail: image, widthPx: 400, heightPx: 300 };
  const raw = { id: photoId, batchId: world.batch, outside: false, photo };
  await arrange(world.people.coordinator, photoSchema, addPhoto, raw);
}, 120_000);
afterAll(() => admin.end());

describe('a story', () => {
  it('is refused without consent, with a consent of tomorrow, and with a picture that nobody described', async () => {
    const id = await desk.draft();
    const codes = async (changes: object) => {
      const result = await desk.run(storySchema, addStory, { ...pictured(id), ...changes });
      return result.kind === 'invalid'
        ? result.errors.map(({ field, code }) => `${field} ${code}`)
        : result.kind;
    };
    expect(await codes({ consent: undefined })).toEqual(['consent consent-missing']);
    expect(await codes({ consentOn: addDays(desk.today, 2) })).toEqual(['consentOn future-date']);
    expect(await codes({ pictureAlt: '' })).toEqual(['pictureAlt missing']);
    expect(await codes({ photoId: newId() })).toEqual(['photoId not-an-option']);
  });

  it('is one of three at most, can be added twice with one effect, and taken out of a draft', async () => {
    const id = await desk.draft();
    const first = newId();
    for (const one of [first, first, newId(), newId()])
      await desk.done(storySchema, addStory, { ...story(id), id: one });
    expect(await desk.run(storySchema, addStory, story(id))).toMatchObject({
      kind: 'invalid',
      errors: [{ code: 'enough-stories' }],
    });
    await desk.done(dropStoryInput, dropStory, { id: first });
    expect((await readAs(world.people.coordinator, (c) => getReport(c, id)))?.stories).toHaveLength(2);
  });

  it('is fixed with its report: neither command nor application changes it after publication', async () => {
    const id = await desk.draft();
    const { id: told } = await desk.done(storySchema, addStory, pictured(id));
    await desk.publish(id);
    expect(await desk.run(storySchema, addStory, story(id))).toMatchObject({ kind: 'not-found' });
    expect(await desk.run(dropStoryInput, dropStory, { id: told })).toMatchObject({ kind: 'not-found' });
    await expect(
      admin.query('update report_story set words = $1 where id = $2', ['Other words', told]),
    ).rejects.toThrow(/fixed/);
    await expect(
      admin.query("update report_picture set image = '\\x01' where id = $1", [told]),
    ).rejects.toThrow(/only be erased/);
  });

  it('keeps the picture it was given when the photo is voided', async () => {
    const id = await desk.draft();
    const { id: told } = await desk.done(storySchema, addStory, pictured(id));
    await desk.publish(id);
    await admin.query("update photo set voided_at = now(), void_reason = 'tried' where id = $1", [photoId]);
    const shown = await readAs(world.people.funder, (context) => getStoryPicture(context, told));
    await admin.query('update photo set voided_at = null, void_reason = null where id = $1', [photoId]);
    expect(shown).toEqual(image);
  });
});

describe('a withdrawn consent', () => {
  it('takes the picture out of every version, erases its bytes, and the report says when', async () => {
    const first = await desk.draft();
    const { id: told } = await desk.done(storySchema, addStory, pictured(first));
    await desk.publish(first);
    const second = (await desk.done(reviseReportInput, reviseReport, { id: first })).id;
    await desk.publish(second);
    const { token } = await desk.done(makeLinkInput, makeLink, desk.link(first));
    expect(await linkPicture(token, told)).toEqual(image);

    await desk.done(withdrawConsentInput, withdrawConsent, {
      id: told,
      part: 'picture',
      withdrawnOn: desk.today,
    });
    for (const version of [first, second]) {
      const [shown] = (await read(version))?.stories ?? [];
      expect(shown).toMatchObject({
        title: 'Straw that was burnt',
        picture: undefined,
        withdrawn: { part: 'picture', on: desk.today },
      });
    }
    expect(await linkPicture(token, told)).toBeUndefined();
    expect((await openLink(token, 'page'))?.report.stories[0]).toMatchObject({
      picture: undefined,
      withdrawn: { part: 'picture', on: desk.today },
    });
    const { rows } = await admin.query('select octet_length(image) as n from report_picture where id = $1', [
      told,
    ]);
    expect(rows).toEqual([{ n: 0 }]);
  });

  it('erases the picture of a copy that was dropped from a draft', async () => {
    const first = await desk.draft();
    const { id: told } = await desk.done(storySchema, addStory, pictured(first));
    await desk.publish(first);
    const second = (await desk.done(reviseReportInput, reviseReport, { id: first })).id;
    const copied = await readAs(world.people.coordinator, (c) => getReport(c, second));
    const copy = copied?.stories[0]?.id;
    await desk.done(dropStoryInput, dropStory, { id: copy });
    await desk.done(withdrawConsentInput, withdrawConsent, {
      id: told,
      part: 'picture',
      withdrawnOn: desk.today,
    });
    const { rows } = await admin.query(
      'select octet_length(image) as n from report_picture where id = any($1)',
      [[told, copy]],
    );
    expect(rows).toEqual([{ n: 0 }, { n: 0 }]);
  });

  it('takes the whole story out, words too, for good; the next version does not tell it', async () => {
    const id = await desk.draft();
    const { id: told } = await desk.done(storySchema, addStory, pictured(id));
    await desk.publish(id);
    await desk.done(withdrawConsentInput, withdrawConsent, {
      id: told,
      part: 'story',
      withdrawnOn: desk.today,
    });
    expect((await read(id))?.stories).toMatchObject([
      { title: '', words: '', picture: undefined, withdrawn: { part: 'story', on: desk.today } },
    ]);
    await expect(
      admin.query(
        'update report_story set consent_withdrawn_on = null, withdrawn_part = null where id = $1',
        [told],
      ),
    ).rejects.toThrow();
    const next = (await desk.done(reviseReportInput, reviseReport, { id })).id;
    expect((await readAs(world.people.coordinator, (c) => getReport(c, next)))?.stories).toEqual([]);
  });

  it('is refused before the consent and of a picture that is not there', async () => {
    const id = await desk.draft();
    const { id: told } = await desk.done(storySchema, addStory, story(id));
    const early = { id: told, part: 'story', withdrawnOn: addDays(desk.today, -31) };
    expect(await desk.run(withdrawConsentInput, withdrawConsent, early)).toMatchObject({
      errors: [{ field: 'withdrawnOn', code: 'before-consent' }],
    });
    const absent = { id: told, part: 'picture', withdrawnOn: desk.today };
    expect(await desk.run(withdrawConsentInput, withdrawConsent, absent)).toMatchObject({
      errors: [{ field: 'part', code: 'no-picture' }],
    });
  });
});

// Last: it lets the site leave whose picture the others show.
it('cannot show a picture of a site that has left, which is not offered either', async () => {
  const id = await desk.draft();
  const offered = async () =>
    (await readAs(world.people.coordinator, listPhotosToChoose)).map((photo) => photo.id);
  expect(await offered()).toContain(photoId);
  await admin.query('update site set left_at = now() where id = $1', [world.people.millLane]);
  expect(await offered()).not.toContain(photoId);
  expect(await desk.run(storySchema, addStory, pictured(id))).toMatchObject({
    kind: 'invalid',
    errors: [{ field: 'photoId', code: 'not-an-option' }],
  });
});
