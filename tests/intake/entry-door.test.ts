import { randomUUID } from 'node:crypto';
import { beforeEach, describe, expect, it } from 'vitest';
import { answerEntry } from '@/app/api/entries/answer-entry';
import { newId } from '@/lib/base/new-id';
import type { Entry } from '@/lib/offline/entry';
import { entryRequest } from '../support/entries';
import { entryWorld } from '../support/entry-world';

const { world, post, harvest, count } = await entryWorld();
const weighings = (id: string) => count('weighing where id = $1', [id]);

describe('the door for entries', () => {
  let entry: Entry;
  beforeEach(() => {
    entry = harvest();
  });
  const nothingSaved = async () => expect(await weighings(entry.id)).toBe(0);

  it('asks for a sign-in and saves nothing without one', async () => {
    const response = await answerEntry(entryRequest(entry), async () => undefined);
    expect(response.status).toBe(401);
    await nothingSaved();
  });

  it('refuses the entry of another account', async () => {
    const { status, body } = await post(entry, world.people.coordinator);
    expect(status).toBe(403);
    expect(body).toMatchObject({ kind: 'refused' });
    await nothingSaved();
  });

  it('refuses an entry for a network that is not the person’s', async () => {
    expect((await post({ ...entry, networkId: world.people.stranger.networkId })).status).toBe(403);
    await nothingSaved();
  });

  it('runs it in the entry’s network though another is open in the session', async () => {
    const { member } = world.people;
    const response = await answerEntry(entryRequest(entry), async () => ({
      person: member,
      actor: undefined,
    }));
    expect(response.status).toBe(200);
    expect(await weighings(entry.id)).toBe(1);
  });

  it.each([
    ['another site', { 'sec-fetch-site': 'cross-site' }],
    ['a sibling site', { 'sec-fetch-site': 'same-site' }],
    ['a sandboxed page', { 'sec-fetch-site': '', origin: 'null' }],
    ['a page elsewhere', { origin: 'https://elsewhere.example' }],
  ])('refuses what comes from %s', async (_from, headers) => {
    expect((await post(entry, world.people.member, headers)).status).toBe(403);
    await nothingSaved();
  });

  it('refuses text/plain, which a form elsewhere could post', async () => {
    expect((await post(entry, world.people.member, { 'content-type': 'text/plain' })).status).toBe(415);
    await nothingSaved();
  });

  it('refuses more than 64 kB', async () => {
    const { status } = await post({ ...entry, input: { ...entry.input, note: 'x'.repeat(70_000) } });
    expect(status).toBe(413);
    await nothingSaved();
  });

  it('refuses a key in the header that is not the entry’s', async () => {
    expect((await post(entry, world.people.member, { 'idempotency-key': randomUUID() })).status).toBe(400);
    await nothingSaved();
  });

  it.each([
    ['no JSON', '{'],
    ['a list', '[]'],
    ['a field too many', JSON.stringify({ id: newId(), more: 1 })],
  ])('refuses %s', async (_what, body) => {
    const request = new Request(entryRequest(entry), { body });
    const response = await answerEntry(request, async () => ({
      person: world.people.member,
      actor: world.people.member,
    }));
    expect(response.status).toBe(400);
  });

  it('sends photos elsewhere', async () => {
    expect((await post({ ...entry, kind: 'photo' })).status).toBe(422);
  });

  it('answers 503 with a time to wait when who asks cannot be found out', async () => {
    const response = await answerEntry(entryRequest(entry), async () => {
      throw new Error('Connection terminated unexpectedly');
    });
    expect(response.status).toBe(503);
    expect(response.headers.get('retry-after')).toBe('5');
  });

  it('lets two hundred entries of a season pass at once and stops a loop gone wild', async () => {
    const who = { ...world.people.member, personId: newId() };
    const statuses = new Map<number, number>();
    for (let sent = 0; sent < 700; sent += 1) {
      const { status, headers } = await post({ ...entry, kind: 'photo' }, who);
      statuses.set(status, (statuses.get(status) ?? 0) + 1);
      if (status === 429) expect(Number(headers.get('retry-after'))).toBeGreaterThan(0);
      if (sent === 199) expect(statuses.get(429)).toBeUndefined();
    }
    expect(statuses.get(429)).toBeGreaterThan(0);
  });
});
