import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { type Command, runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import type { Result } from '@/lib/base/result';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import { addPhoto } from '@/lib/records/photo/add-photo.command';
import { addPhotoInput } from '@/lib/records/photo/photo.input';
import { buildReport } from '@/lib/report/build-report.command';
import { buildReportInput, publishReportInput } from '@/lib/report/build-report.input';
import { getReport } from '@/lib/report/get-report.query';
import { makeLinkInput, withdrawLinkInput } from '@/lib/report/link/link.input';
import { listLinks } from '@/lib/report/link/list-links.query';
import { makeLink } from '@/lib/report/link/make-link.command';
import { linkIsOpen, linkPicture, openLink } from '@/lib/report/link/open-link';
import { withdrawLink } from '@/lib/report/link/withdraw-link.command';
import { publishReport } from '@/lib/report/publish-report.command';
import { reviseReport } from '@/lib/report/revise-report.command';
import { reviseReportInput } from '@/lib/report/revise-report.input';
import { addStory } from '@/lib/report/story/add-story.command';
import { dropStory } from '@/lib/report/story/drop-story.command';
import { getStoryPicture } from '@/lib/report/story/get-story-picture.query';
import { addStoryInput, dropStoryInput } from '@/lib/report/story/story.input';
import { withdrawConsent } from '@/lib/report/story/withdraw-consent.command';
import { withdrawConsentInput } from '@/lib/report/story/withdraw-consent.input';
import { arrange, makeWorld, type World } from '../access/world';
import { testDatabase } from '../support/database';

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
let photoId: string;
// The database judges by its own clock whether a link is open.
const now = new Date();
let today: string;

/** By the coordinator, today. */
function run<S extends z.ZodType, T>(
  schema: S,
  command: Command<z.output<S>, T>,
  raw: unknown,
): Promise<Result<T>> {
  return runAs(world.people.coordinator, schema, command, raw, { now });
}
async function done<S extends z.ZodType, T>(
  schema: S,
  command: Command<z.output<S>, T>,
  raw: unknown,
): Promise<T> {
  const result = await run(schema, command, raw);
  if (result.kind !== 'ok') throw new Error(`${command.name}: ${JSON.stringify(result)}`);
  return result.value;
}
const draft = async () =>
  (
    await done(buildReportInput, buildReport, {
      title: 'A year',
      from: '2026-01-01',
      to: '2026-07-20',
      indicators: ['harvest'],
    })
  ).id;
const publish = (id: string) => done(publishReportInput, publishReport, { id });
const published = async () => (await publish(await draft())).id;
const story = (reportId: string) => ({
  reportId,
  title: 'Straw that was burnt',
  words: 'It comes to the shed now.',
  consent: 'yes',
  consentOn: addDays(today, -30),
});
const pictured = (reportId: string) => ({ ...story(reportId), photoId, pictureAlt: 'Straw in nets', image });
const link = (reportId: string, days = 10) => ({
  reportId,
  forWhom: 'A foundation',
  language: 'es',
  lastDay: addDays(today, days),
});
const read = (id: string) => readAs(world.people.funder, (context) => getReport(context, id));

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
  today = todayInZone(world.people.coordinator.networkTimeZone, now);
  photoId = newId();
  const photo = { image, thumbnail: image, widthPx: 400, heightPx: 300 };
  await arrange(world.people.coordinator, photoSchema, addPhoto, {
    id: photoId,
    batchId: world.batch,
    outside: false,
    photo,
  });
}, 120_000);
afterAll(() => admin.end());

describe('a story', () => {
  it('is refused without consent, with a consent of tomorrow, and with a picture that nobody described', async () => {
    const id = await draft();
    const codes = async (changes: object) => {
      const result = await run(storySchema, addStory, { ...pictured(id), ...changes });
      return result.kind === 'invalid'
        ? result.errors.map(({ field, code }) => `${field} ${code}`)
        : result.kind;
    };
    expect(await codes({ consent: undefined })).toEqual(['consent consent-missing']);
    expect(await codes({ consentOn: addDays(today, 2) })).toEqual(['consentOn future-date']);
    expect(await codes({ pictureAlt: '' })).toEqual(['pictureAlt missing']);
    expect(await codes({ photoId: newId() })).toEqual(['photoId not-an-option']);
  });

  it('is one of three at most, can be added twice with one effect, and taken out of a draft', async () => {
    const id = await draft();
    const first = newId();
    for (const one of [first, first, newId(), newId()])
      await done(storySchema, addStory, { ...story(id), id: one });
    expect(await run(storySchema, addStory, story(id))).toMatchObject({
      kind: 'invalid',
      errors: [{ code: 'enough-stories' }],
    });
    await done(dropStoryInput, dropStory, { id: first });
    expect((await readAs(world.people.coordinator, (c) => getReport(c, id)))?.stories).toHaveLength(2);
  });

  it('is fixed with its report: neither command nor application changes it after publication', async () => {
    const id = await draft();
    const { id: told } = await done(storySchema, addStory, pictured(id));
    await publish(id);
    expect(await run(storySchema, addStory, story(id))).toMatchObject({ kind: 'not-found' });
    expect(await run(dropStoryInput, dropStory, { id: told })).toMatchObject({ kind: 'not-found' });
    await expect(
      admin.query('update report_story set words = $1 where id = $2', ['Other words', told]),
    ).rejects.toThrow(/fixed/);
    await expect(
      admin.query("update report_picture set image = '\\x01' where id = $1", [told]),
    ).rejects.toThrow(/only be erased/);
  });

  it('keeps the picture it was given when the photo is voided', async () => {
    const id = await draft();
    const { id: told } = await done(storySchema, addStory, pictured(id));
    await publish(id);
    await admin.query("update photo set voided_at = now(), void_reason = 'tried' where id = $1", [photoId]);
    const shown = await readAs(world.people.funder, (context) => getStoryPicture(context, told));
    await admin.query('update photo set voided_at = null, void_reason = null where id = $1', [photoId]);
    expect(shown).toEqual(image);
  });
});

describe('a withdrawn consent', () => {
  it('takes the picture out of every version, erases its bytes, and the report says when', async () => {
    const first = await draft();
    const { id: told } = await done(storySchema, addStory, pictured(first));
    await publish(first);
    const second = (await done(reviseReportInput, reviseReport, { id: first })).id;
    await publish(second);
    const { token } = await done(makeLinkInput, makeLink, link(first));
    expect(await linkPicture(token, told)).toEqual(image);

    await done(withdrawConsentInput, withdrawConsent, { id: told, part: 'picture', withdrawnOn: today });
    for (const version of [first, second]) {
      const [shown] = (await read(version))?.stories ?? [];
      expect(shown).toMatchObject({
        title: 'Straw that was burnt',
        picture: undefined,
        withdrawn: { part: 'picture', on: today },
      });
    }
    expect(await linkPicture(token, told)).toBeUndefined();
    expect((await openLink(token, 'page'))?.report.stories[0]).toMatchObject({
      picture: undefined,
      withdrawn: { part: 'picture', on: today },
    });
    const { rows } = await admin.query('select octet_length(image) as n from report_picture where id = $1', [
      told,
    ]);
    expect(rows).toEqual([{ n: 0 }]);
  });

  it('takes the whole story out, words too, for good; the next version does not tell it', async () => {
    const id = await draft();
    const { id: told } = await done(storySchema, addStory, pictured(id));
    await publish(id);
    await done(withdrawConsentInput, withdrawConsent, { id: told, part: 'story', withdrawnOn: today });
    expect((await read(id))?.stories).toMatchObject([
      { title: '', words: '', picture: undefined, withdrawn: { part: 'story', on: today } },
    ]);
    await expect(
      admin.query(
        'update report_story set consent_withdrawn_on = null, withdrawn_part = null where id = $1',
        [told],
      ),
    ).rejects.toThrow();
    const next = (await done(reviseReportInput, reviseReport, { id })).id;
    expect((await readAs(world.people.coordinator, (c) => getReport(c, next)))?.stories).toEqual([]);
  });

  it('is refused before the consent and of a picture that is not there', async () => {
    const id = await draft();
    const { id: told } = await done(storySchema, addStory, story(id));
    const early = { id: told, part: 'story', withdrawnOn: addDays(today, -31) };
    expect(await run(withdrawConsentInput, withdrawConsent, early)).toMatchObject({
      errors: [{ field: 'withdrawnOn', code: 'before-consent' }],
    });
    const absent = { id: told, part: 'picture', withdrawnOn: today };
    expect(await run(withdrawConsentInput, withdrawConsent, absent)).toMatchObject({
      errors: [{ field: 'part', code: 'no-picture' }],
    });
  });
});

describe('a link', () => {
  it('opens one published report in its language, and each opening is noted with its form and nothing of the visitor', async () => {
    const id = await published();
    const made = await done(makeLinkInput, makeLink, link(id));
    expect(made.token).toMatch(/^[\w-]{32,}$/);
    expect(await linkIsOpen(made.token)).toBe(true);
    const opened = await openLink(made.token, 'page');
    await openLink(made.token, 'pdf');
    expect(opened).toMatchObject({ language: 'es', report: { id, title: 'A year', version: 1 } });
    expect(opened?.report.content).toEqual((await read(id))?.content);
    const [listed] = await readAs(world.people.coordinator, (context) => listLinks(context, id));
    expect(listed?.visits).toBe(2);
    expect(listed?.latest.map(({ form }) => form)).toEqual(['pdf', 'page']);
    const { rows } = await admin.query(
      `select column_name::text as name from information_schema.columns where table_name = 'report_link_visit' order by 1`,
    );
    expect(rows.map(({ name }) => name)).toEqual(['created_at', 'form', 'id', 'link_id', 'network_id']);
  });

  it('is kept as its hash alone, in its row and in the history', async () => {
    const { id, token } = await done(makeLinkInput, makeLink, link(await published()));
    const { rows } = await admin.query('select to_jsonb(l)::text as told from report_link l where id = $1', [
      id,
    ]);
    const { rows: history } = await admin.query(
      'select to_jsonb(h)::text as told from history h where record_id = $1',
      [id],
    );
    expect(rows[0]?.told).not.toContain(token);
    expect(history.length).toBeGreaterThan(0);
    const hash: unknown = (await admin.query('select token_hash from report_link where id = $1', [id]))
      .rows[0]?.token_hash;
    for (const { told } of history) expect(told).not.toContain(hash);
  });

  it('opens nothing when it is wrong, withdrawn, expired, or its report was voided, and leaves no visit then', async () => {
    const id = await published();
    const visits = async () =>
      (await admin.query('select count(*)::int as n from report_link_visit')).rows[0]?.n;
    const withdrawn = await done(makeLinkInput, makeLink, link(id));
    await done(withdrawLinkInput, withdrawLink, { id: withdrawn.id });
    const expired = await done(makeLinkInput, makeLink, link(id));
    await admin.query(
      "update report_link set expires_at = created_at + interval '1 millisecond' where id = $1",
      [expired.id],
    );
    const voided = await published();
    const ofVoided = await done(makeLinkInput, makeLink, link(voided));
    await admin.query("update report set voided_at = now(), void_reason = 'tried' where id = $1", [voided]);
    const before = await visits();
    const tokens = [withdrawn.token, expired.token, ofVoided.token, 'wrong', `${expired.token}x`, ''];
    for (const token of tokens) {
      expect(await linkIsOpen(token)).toBe(false);
      expect(await openLink(token, 'page')).toBeUndefined();
    }
    expect(await visits()).toBe(before);
  });

  it('is made for published reports only, and for a year at most', async () => {
    expect(await run(makeLinkInput, makeLink, link(await draft()))).toMatchObject({ kind: 'not-found' });
    const id = await published();
    expect(await run(makeLinkInput, makeLink, link(id, -1))).toMatchObject({
      errors: [{ code: 'past-date' }],
    });
    expect(await run(makeLinkInput, makeLink, link(id, 400))).toMatchObject({
      errors: [{ code: 'too-far' }],
    });
  });
});
