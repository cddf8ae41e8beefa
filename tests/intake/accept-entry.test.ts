import { randomUUID } from 'node:crypto';
import { Client } from 'pg';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { answerEntry } from '@/app/api/entries/answer-entry';
import type { Actor } from '@/lib/access/actor';
import { newId } from '@/lib/base/new-id';
import type { Entry } from '@/lib/offline/entry';
import { startBags } from '../support/bags';
import { testDatabase } from '../support/database';
import { entryRequest, harvestEntry, testSettings } from '../support/entries';
import { type Growers, growers } from '../support/growers';
import { type Shed, shed } from '../support/shed';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let people: Growers;
let stock: Shed;
let batchId: string;

beforeAll(async () => {
  testSettings();
  await admin.connect();
  people = await growers(superuser);
  stock = await shed(people);
});
beforeEach(async () => {
  batchId = await startBags(people, stock);
});
afterAll(() => admin.end());

type Body = Record<string, unknown>;
type Answer = { status: number; body: Body; headers: Headers };

async function post(
  entry: Entry,
  who: Actor = people.member,
  headers: Record<string, string> = {},
): Promise<Answer> {
  const response = await answerEntry(entryRequest(entry, headers), async () => ({ person: who, actor: who }));
  return { status: response.status, body: (await response.json()) as Body, headers: response.headers };
}

const harvest = (changes: Partial<Entry> = {}) => harvestEntry(people.member, batchId, changes);
const withMass = (text: string) => ({
  weighedOn: '2026-05-10',
  fresh: { text, unit: 'kg' },
  lines: [{ batchId, flush: 1 }],
});

async function count(sql: string, values: readonly unknown[]): Promise<number> {
  const { rows } = await admin.query(`select count(*)::int as n from ${sql}`, [...values]);
  return rows[0]?.n;
}
const weighings = (id: string) => count('weighing where id = $1', [id]);

describe('an entry of a phone', () => {
  it('is saved under its own id, said to come from a phone, with a receipt', async () => {
    const entry = harvest();
    const { status, body } = await post(entry);
    expect(status).toBe(200);
    expect(body).toMatchObject({ kind: 'saved', recordId: entry.id, revision: 1 });
    expect(await count("weighing where id = $1 and origin = 'offline'", [entry.id])).toBe(1);
    expect(await count('entry_receipt where key = $1 and entry_id = $2', [entry.key, entry.id])).toBe(1);
  });

  it('gets its first answer again, word for word, when it is sent again', async () => {
    const entry = harvest();
    const first = await post(entry);
    const again = await post(entry);
    expect(again).toMatchObject({ status: 200, body: first.body });
    expect(await weighings(entry.id)).toBe(1);
  });

  it('has one effect when it arrives five times at once', async () => {
    const entry = harvest();
    const answers = await Promise.all(Array.from({ length: 5 }, () => post(entry)));
    expect(answers.map(({ status }) => status)).toEqual([200, 200, 200, 200, 200]);
    expect(new Set(answers.map(({ body }) => JSON.stringify(body))).size).toBe(1);
    expect(await weighings(entry.id)).toBe(1);
  });

  it('is refused when its key was used for another content', async () => {
    const entry = harvest();
    await post(entry);
    const { status, body } = await post({ ...entry, input: withMass('2') });
    expect(status).toBe(422);
    expect(body.type).toBe('tag:pinset,2026:problem/refused');
    expect(await count('weighing where id = $1 and fresh_grams = 1360', [entry.id])).toBe(1);
  });

  it('has one record under a new key, and the same answer where nothing else changed', async () => {
    const entry = harvest();
    const first = await post(entry);
    expect(await post({ ...entry, key: randomUUID() })).toMatchObject({ status: 200, body: first.body });
    expect(await weighings(entry.id)).toBe(1);
  });

  it('shows both versions when its first wording was saved and another follows', async () => {
    const entry = harvest();
    await post(entry);
    const { status, body } = await post({ ...entry, key: randomUUID(), input: withMass('1.63') });
    expect(status).toBe(412);
    expect(body).toMatchObject({
      kind: 'conflict',
      revision: 1,
      changedBy: 'Ives Marrow',
      fields: [
        {
          label: 'Fresh mass',
          theirs: expect.stringMatching(/^1\.36\skg/),
          yours: expect.stringMatching(/^1\.63\skg/),
        },
      ],
    });
  });

  it('corrects the record once it names the revision that it has seen', async () => {
    const entry = harvest();
    await post(entry);
    const input = { ...withMass('1.63'), revision: 1, reason: 'Read the scale wrong' };
    const { status, body } = await post({ ...entry, key: randomUUID(), input });
    expect(status).toBe(200);
    expect(body).toMatchObject({ recordId: entry.id, revision: 2 });
    const reasons = await admin.query(
      "select reason from history where record_id = $1 and action = 'changed'",
      [entry.id],
    );
    expect(reasons.rows).toEqual([{ reason: 'Read the scale wrong' }]);
  });

  it('is asked about when it is implausible, and saved once the question is answered', async () => {
    const input = withMass('25');
    const asked = await post(harvest({ input }));
    expect(asked.status).toBe(409);
    expect(asked.body).toMatchObject({ kind: 'asked' });
    const codes = (asked.body.questions as { code: string; text: string }[]).map(({ code }) => code);
    expect((await post(harvest({ input, confirmed: codes }))).status).toBe(200);
  });

  it('is refused in the language of its person, with the field that is wrong', async () => {
    const input = { ...withMass('1'), weighedOn: '2026-03-01' };
    const { status, body, headers } = await post(harvest({ input }), {
      ...people.member,
      language: 'es',
      region: 'es-US',
    });
    expect(status).toBe(422);
    expect(headers.get('content-type')).toBe('application/problem+json');
    expect(body).toMatchObject({
      kind: 'refused',
      errors: [{ field: 'weighedOn', text: expect.stringMatching(/día|fecha/) }],
    });
  });

  it('is not there for a member of another site', async () => {
    const { neighbour } = people;
    const { status } = await post(harvestEntry(neighbour, batchId), neighbour);
    expect(status).toBe(404);
  });

  it.each([
    ['finding', { foundOn: '2026-04-20', units: 1, sign: 'green', stage: 'colonising', action: 'isolated' }],
    ['check', { kind: 'pins_seen', checkedOn: '2026-05-01' }],
    ['look', { lookedOn: '2026-04-22' }],
    ['loss', { lostOn: '2026-04-23', units: 1, cause: 'dried_out' }],
  ] as const)('can be a %s', async (kind, input) => {
    const { status, body } = await post(harvest({ kind, input: { batchId, ...input } }));
    expect(body).toMatchObject({ kind: 'saved' });
    expect(status).toBe(200);
  });
});

describe('an entry that takes another back', () => {
  const undo = (of: Entry, changes: Partial<Entry> = {}): Entry =>
    harvest({ kind: 'undo', input: { entryId: of.id }, madeAt: new Date().toISOString(), ...changes });

  it('voids the record with a reason of its own and leaves it in the history', async () => {
    const entry = harvest();
    await post(entry);
    const { status, body } = await post(undo(entry));
    expect(status).toBe(200);
    expect(body).toMatchObject({ recordId: entry.id, revision: 2 });
    expect(await count("weighing where id = $1 and void_reason like 'Taken back%'", [entry.id])).toBe(1);
  });

  it('is answered the same when it is sent again', async () => {
    const entry = harvest();
    await post(entry);
    const back = undo(entry);
    const first = await post(back);
    expect(await post(back)).toMatchObject({ status: 200, body: first.body });
  });

  it('is refused more than 15 minutes later, by both clocks', async () => {
    const entry = harvest();
    await post(entry);
    await admin.query(
      "alter table entry_receipt disable row level security; update entry_receipt set saved_at = saved_at - interval '16 minutes'",
    );
    await admin.query('alter table entry_receipt enable row level security');
    expect((await post(undo(entry))).status).toBe(422);
    const pressedInTime = undo(entry, { madeAt: new Date(Date.now() - 10 * 60_000).toISOString() });
    expect((await post(pressedInTime)).status).toBe(200);
  });

  it('is refused to anybody else', async () => {
    const entry = harvest();
    await post(entry);
    const { coordinator } = people;
    const { status } = await post({ ...undo(entry), personId: coordinator.personId }, coordinator);
    expect(status).toBe(404);
  });

  it('is refused once somebody has changed the record', async () => {
    const entry = harvest();
    await post(entry);
    const input = { ...withMass('1.63'), id: entry.id, revision: 1, reason: 'Scale was wrong' };
    await post(harvestEntry(people.coordinator, batchId, { input }), people.coordinator);
    expect((await post(undo(entry))).status).toBe(422);
  });
});

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
    const { status, body } = await post(entry, people.coordinator);
    expect(status).toBe(403);
    expect(body).toMatchObject({ kind: 'refused' });
    await nothingSaved();
  });

  it('refuses an entry for a network that is not the person’s', async () => {
    expect((await post({ ...entry, networkId: people.stranger.networkId })).status).toBe(403);
    await nothingSaved();
  });

  it('runs it in the entry’s network though another is open in the session', async () => {
    const { member } = people;
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
    expect((await post(entry, people.member, headers)).status).toBe(403);
    await nothingSaved();
  });

  it('refuses text/plain, which a form elsewhere could post', async () => {
    expect((await post(entry, people.member, { 'content-type': 'text/plain' })).status).toBe(415);
    await nothingSaved();
  });

  it('refuses more than 64 kB', async () => {
    const { status } = await post({ ...entry, input: { ...entry.input, note: 'x'.repeat(70_000) } });
    expect(status).toBe(413);
    await nothingSaved();
  });

  it('refuses a key in the header that is not the entry’s', async () => {
    expect((await post(entry, people.member, { 'idempotency-key': randomUUID() })).status).toBe(400);
    await nothingSaved();
  });

  it.each([
    ['no JSON', '{'],
    ['a list', '[]'],
    ['a field too many', JSON.stringify({ id: newId(), more: 1 })],
  ])('refuses %s', async (_what, body) => {
    const request = new Request(entryRequest(entry), { body });
    const response = await answerEntry(request, async () => ({
      person: people.member,
      actor: people.member,
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
    const who = { ...people.member, personId: newId() };
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
