import { randomUUID } from 'node:crypto';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import sharp from 'sharp';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { answerPhoto } from '@/app/api/photos/answer-photo';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import type { Entry } from '@/lib/offline/entry';
import { getPhoto } from '@/lib/records/photo/get-photo.query';
import { listPhotos } from '@/lib/records/photo/list-photos.query';
import { entryWorld } from '../support/entry-world';

const { world, harvest, count } = await entryWorld();
let picture: Blob;

beforeAll(async () => {
  const drawn = sharp({ create: { width: 64, height: 48, channels: 3, background: '#7a9a5a' } });
  picture = new Blob([new Uint8Array(await drawn.png().toBuffer())]);
});
afterEach(() => {
  delete process.env.PHOTO_STORE;
});

async function post(form: FormData, who: Actor, headers: Readonly<Record<string, string>> = {}) {
  const request = new Request('http://localhost:3000/api/photos', { method: 'POST', body: form });
  // A browser says how long its body is; this stand-in for one has to be told.
  const all = { 'content-length': '5000', 'sec-fetch-site': 'same-origin', ...headers };
  for (const [name, value] of Object.entries(all)) request.headers.set(name, value);
  const response = await answerPhoto(request, async () => ({ person: who, actor: who }));
  return { status: response.status, headers: response.headers, text: await response.text() };
}

const photoEntry = (): Entry => harvest({ kind: 'photo', input: { batchId: world.batchId } });

function sent(entry: Entry, who = world.people.member, key = entry.key) {
  const form = new FormData();
  form.set('entry', JSON.stringify(entry));
  form.set('file', picture, 'photo');
  return post(form, who, { 'idempotency-key': key });
}

describe('a photo of a phone', () => {
  it('is kept once however often it is sent, and shown with its batch', async () => {
    const entry = photoEntry();
    for (let time = 0; time < 2; time += 1) expect((await sent(entry)).status).toBe(200);
    expect(await count('photo where id = $1', [entry.id])).toBe(1);
    const shown = await readAs(world.people.member, (context) => listPhotos(context, world.batchId));
    expect(shown).toMatchObject([{ id: entry.id, widthPx: 64, heightPx: 48 }]);
  });

  it('is refused with another key than its own, and under another account', async () => {
    expect((await sent(photoEntry(), world.people.member, randomUUID())).status).toBe(422);
    expect((await sent(photoEntry(), world.people.coordinator)).status).toBe(403);
  });

  it('of a batch that is not there, or not the person’s, is kept nowhere', async () => {
    const { neighbour } = world.people;
    const entry = { ...photoEntry(), personId: neighbour.personId };
    expect((await sent(entry, neighbour)).status).toBe(404);
    expect(await count('photo where id = $1', [entry.id])).toBe(0);
  });
});

describe('a photo of a form', () => {
  const posted = (changes: Readonly<Record<string, string>> = {}, headers = {}) => {
    const form = new FormData();
    const fields = { id: newId(), batchId: world.batchId, findingId: '', caption: 'Pins', ...changes };
    for (const [name, value] of Object.entries(fields)) form.set(name, value);
    form.set('file', picture, 'photo.png');
    return post(form, world.people.member, headers);
  };

  it('leads to its batch, or back to the form with what is wrong', async () => {
    const saved = await posted();
    expect(saved.status).toBe(303);
    expect(saved.headers.get('location')).toBe(`/batches/${world.batchId}?saved=photo#photos`);
    const wrong = await posted({ findingId: newId() });
    expect(wrong.headers.get('location')).toContain(`/batches/${world.batchId}/photos/new?problem=not-there`);
  });

  it('sent by its page’s script tells where to go on to, which a script learns from no redirect', async () => {
    const saved = await posted({}, { accept: 'application/json' });
    expect(saved.status).toBe(200);
    expect(JSON.parse(saved.text)).toEqual({ goOnTo: `/batches/${world.batchId}?saved=photo#photos` });
  });

  it('is refused from another site, and where it is larger than is taken', async () => {
    expect((await posted({}, { 'sec-fetch-site': 'cross-site' })).status).toBe(403);
    expect((await posted({}, { 'content-length': '999999999' })).status).toBe(413);
  });
});

describe('with a store outside', () => {
  it('the bytes are there and the record is here; a store that fails leaves no record', async () => {
    const names: string[] = [];
    let status = 200;
    const server = createServer((request, response) => {
      request.resume();
      request.on('end', () => {
        names.push(request.url ?? '');
        response.writeHead(status).end();
      });
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    const { port } = server.address() as AddressInfo;
    process.env.PHOTO_STORE = `s3://key:secret@127.0.0.1:${port}/pictures?plain=yes`;
    const entry = photoEntry();
    expect((await sent(entry)).status).toBe(200);
    expect(names).toHaveLength(2);
    const found = await readAs(world.people.member, (context) => getPhoto(context, entry.id, 'small'));
    expect(found).toEqual({ kind: 'outside', name: expect.stringContaining(entry.id) });
    expect(await count('photo_content where id = $1', [entry.id])).toBe(0);
    status = 403;
    const lost = photoEntry();
    expect((await sent(lost)).status).toBe(503);
    expect(await count('photo where id = $1', [lost.id])).toBe(0);
    server.close();
  });
});
