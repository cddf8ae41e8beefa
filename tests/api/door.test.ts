import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeWorld, type World } from '../access/world';
import { testDatabase } from '../support/database';
import { send, tokenOf } from './api-world';
import { problem } from './problem';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let world: World;
let token: string;

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
  token = await tokenOf(world.people.member);
});
afterAll(() => admin.end());

const look = (more: object = {}) => ({ batchId: world.batch, lookedOn: '2026-04-13', ...more });
const looks = async () =>
  Number(
    (await admin.query('select count(*)::int as n from look where batch_id = $1', [world.batch])).rows[0]?.n,
  );

describe('a key of a write', () => {
  it('answers the same request again as the first time, without a second effect', async () => {
    const before = await looks();
    const headers = { 'idempotency-key': 'again' };
    const first = await send('POST', '/looks', { token, body: look(), headers });
    const again = await send('POST', '/looks', { token, body: look(), headers });
    expect([first.status, again.status]).toEqual([201, 201]);
    expect(await again.json()).toEqual(await first.json());
    expect(again.headers.get('etag')).toBe(first.headers.get('etag'));
    expect(again.headers.get('location')).toBe(first.headers.get('location'));
    expect([first, again].map((one) => one.headers.get('answered-before'))).toEqual([null, 'true']);
    expect(await looks()).toBe(before + 1);
  });

  it('has one effect when five are sent at once', async () => {
    const before = await looks();
    const headers = { 'idempotency-key': 'at-once' };
    const answers = await Promise.all(
      [1, 2, 3, 4, 5].map(() => send('POST', '/looks', { token, body: look(), headers })),
    );
    expect(answers.map(({ status }) => status)).toEqual([201, 201, 201, 201, 201]);
    const told = await Promise.all(answers.map((answer) => answer.json()));
    expect(new Set(told.map(({ id }) => id)).size).toBe(1);
    expect(await looks()).toBe(before + 1);
  });

  it('is refused with other content, and is another key for another token', async () => {
    const headers = { 'idempotency-key': 'mine' };
    await send('POST', '/looks', { token, body: look(), headers });
    const other = await send('POST', '/looks', { token, body: look({ note: 'other' }), headers });
    expect(other.status).toBe(422);
    expect((await problem(other)).type).toBe('tag:pinset,2026:problem/key-reused');
    const second = await tokenOf(world.people.coordinator);
    const theirs = await send('POST', '/looks', { token: second, body: look({ note: 'other' }), headers });
    expect(theirs.status).toBe(201);
  });

  it('is free again after a refusal, and is needed', async () => {
    const headers = { 'idempotency-key': 'freed' };
    const refused = await send('POST', '/looks', { token, body: look({ lookedOn: '2020-01-01' }), headers });
    expect(refused.status).toBe(422);
    expect((await send('POST', '/looks', { token, body: look(), headers })).status).toBe(201);
    for (const key of ['', 'two words', 'x'.repeat(256)]) {
      const missing = await send('POST', '/looks', {
        token,
        body: look(),
        headers: { 'idempotency-key': key },
      });
      expect(missing.status).toBe(400);
      expect((await problem(missing)).errors?.[0]).toMatchObject({
        header: 'Idempotency-Key',
        code: 'api-key-needed',
      });
    }
  });
});

describe('an id of the script’s own', () => {
  it('that is taken is refused, so that nothing sent is answered as kept and lost', async () => {
    const id = '0199b000-0000-7000-8000-000000000001';
    expect((await send('POST', '/looks', { token, body: look({ id }) })).status).toBe(201);
    const other = await send('POST', '/looks', { token, body: look({ id, note: 'another' }) });
    expect(other.status).toBe(422);
    expect((await problem(other)).errors?.[0]).toMatchObject({ pointer: '#/id', code: 'already-there' });
  });
});

describe('a revision', () => {
  const made = async () =>
    (await (await send('POST', '/looks', { token, body: look() })).json()) as { id: string };
  const mend = (id: string, ifMatch: string | undefined, note: string) =>
    send('PUT', `/looks/${id}`, {
      token,
      body: { lookedOn: '2026-04-13', note, reason: 'tried' },
      headers: ifMatch === undefined ? {} : { 'if-match': ifMatch },
    });

  it('is needed to change a record, and the stale one of two editors is refused', async () => {
    const { id } = await made();
    for (const missing of [undefined, '*']) expect((await mend(id, missing, 'x')).status).toBe(428);
    for (const other of ['W/"1"', '1', '"one"']) expect((await mend(id, other, 'x')).status).toBe(412);
    const first = await mend(id, '"1"', 'first');
    expect(first.status).toBe(200);
    expect(first.headers.get('etag')).toBe('"2"');
    const second = await mend(id, '"1"', 'second');
    expect(second.status).toBe(412);
    expect(second.headers.get('etag')).toBe('"2"');
    const now = await send('GET', `/looks/${id}`, { token });
    expect(await now.json()).toMatchObject({ revision: 2, note: 'first' });
  });

  it('spares a reader what has not changed', async () => {
    const { id } = await made();
    const ask = (tag: string) => send('GET', `/looks/${id}`, { token, headers: { 'if-none-match': tag } });
    const same = await ask('"1"');
    expect([same.status, await same.text()]).toEqual([304, '']);
    expect((await ask('"7", W/"1"')).status).toBe(304);
    expect((await ask('"2"')).status).toBe(200);
    const list = await send('GET', '/sites', { token });
    const etag = list.headers.get('etag') ?? '';
    expect((await send('GET', '/sites', { token, headers: { 'if-none-match': etag } })).status).toBe(304);
  });

  it('lets a void take a record out of the lists, never out of reach', async () => {
    const { id } = await made();
    const voided = await send('POST', `/looks/${id}/void`, {
      token,
      body: { reason: 'twice' },
      headers: { 'if-match': '"1"' },
    });
    expect(await voided.json()).toMatchObject({ id, voided: 'twice' });
    const listed = async (query: string) =>
      (
        (await (await send('GET', `/looks?limit=200${query}`, { token })).json()) as {
          items: { id: string }[];
        }
      ).items.some((one) => one.id === id);
    expect([await listed(''), await listed('&voided=yes')]).toEqual([false, true]);
    const history = await admin.query(
      `select reason, origin from history where record_id = $1 and action = 'changed'`,
      [id],
    );
    expect(history.rows).toEqual([{ reason: 'twice', origin: 'api' }]);
  });
});
