import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { passToken } from '@/lib/api/door/token-limit';
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

describe('a list', () => {
  it('meets each row once by its links while others are added, and finds the way back', async () => {
    const place = await send('POST', '/places', {
      token,
      body: { siteId: world.people.millLane, name: 'Rack' },
    });
    const { id: placeId } = (await place.json()) as { id: string };
    const read = (hour: number) =>
      send('POST', '/conditions', {
        token,
        body: { placeId, celsius: 18, readAt: `2026-06-01T${String(hour).padStart(2, '0')}:00:00Z` },
      });
    for (let hour = 0; hour < 7; hour += 1) await read(hour);
    const linkOf = (answer: Response, rel: string) =>
      new RegExp(`<([^>]+)>; rel="${rel}"`)
        .exec(answer.headers.get('link') ?? '')?.[1]
        ?.replace('/api/v1', '');
    const seen: string[] = [];
    const pages: string[] = [];
    let address: string | undefined = `/conditions?place=${placeId}&limit=3`;
    let last: Response | undefined;
    while (address !== undefined) {
      const answer: Response = await send('GET', address, { token });
      const { items } = (await answer.clone().json()) as { items: { id: string; readAt: string }[] };
      seen.push(...items.map(({ readAt }) => readAt));
      pages.push(address);
      last = answer;
      await read(10 + pages.length);
      address = linkOf(answer, 'next');
    }
    expect(pages).toHaveLength(3);
    expect(seen).toHaveLength(7);
    expect(new Set(seen).size).toBe(7);
    const back = await send('GET', linkOf(last ?? new Response(), 'prev') ?? '', { token });
    const { items } = (await back.json()) as { items: { readAt: string }[] };
    expect(items.map(({ readAt }) => readAt)).toEqual(seen.slice(3, 6));
    expect(linkOf(back, 'prev')).toBeDefined();
  });

  it('refuses a parameter that it does not know or cannot read, by name', async () => {
    for (const [query, parameter] of [
      ['limit=many', 'limit'],
      ['limit=201', 'limit'],
      ['after=1', 'after'],
      ['colour=white', 'colour'],
    ] as const) {
      const answer = await send('GET', `/looks?${query}`, { token });
      expect(answer.status).toBe(400);
      expect((await problem(answer)).errors?.[0]?.parameter).toBe(parameter);
    }
  });
});

describe('a problem', () => {
  it('points at each field by the name that was sent and says what to do, in the reader’s language', async () => {
    const body = {
      weighedOn: '2026-05-04',
      freshGrams: 'three',
      lines: [{ batchId: world.batch, flush: 0 }],
    };
    const answer = await send('POST', '/weighings', { token, body });
    expect(answer.status).toBe(422);
    expect((await problem(answer)).errors).toEqual([
      expect.objectContaining({ pointer: '#/freshGrams', code: 'json-number' }),
      expect.objectContaining({ pointer: '#/lines/0/flush', code: 'too-small' }),
    ]);
    const line = { batchId: world.batch, flush: 1 };
    const deeper = { ...body, freshGrams: 3000, lines: [line, line] };
    const refused = await problem(await send('POST', '/weighings', { token, body: deeper }));
    expect(refused.errors?.[0]).toMatchObject({ pointer: '#/lines/1/batchId', code: 'batch-twice' });
    const heavy = await problem(
      await send('POST', '/weighings', { token, body: { ...body, freshGrams: 90_000_000, lines: [line] } }),
    );
    expect(heavy.errors?.[0]).toMatchObject({ pointer: '#/freshGrams', code: 'too-much-for-batch' });
    await admin.query(`update person set language = 'es' where id = $1`, [world.people.neighbour.personId]);
    const spanish = await send('POST', '/weighings', {
      token: await tokenOf(world.people.neighbour),
      body: {},
    });
    expect(spanish.headers.get('content-language')).toBe('es');
    expect((await problem(spanish)).detail).toMatch(/^(Indique|Escriba|Introduzca|Ingrese|Anote)/);
  });

  it('asks about what is unlikely, and takes it once its code is sent', async () => {
    const body = { weighedOn: '2026-05-06', freshGrams: 24_000, lines: [{ batchId: world.batch, flush: 1 }] };
    const headers = { 'idempotency-key': 'unlikely' };
    const asked = await send('POST', '/weighings', { token, body, headers });
    expect(asked.status).toBe(409);
    const { questions = [], detail } = await problem(asked);
    expect(questions.length).toBeGreaterThan(0);
    expect(detail).toContain('"confirmed"');
    const confirmed = questions.map(({ code }) => code);
    const saved = await send('POST', '/weighings', { token, body: { ...body, confirmed }, headers });
    expect(saved.status).toBe(201);
  });

  it.each([
    ['no such address', 'GET', '/mushrooms', {}, 404],
    ['an id that is none', 'GET', '/looks/1', {}, 404],
    ['another method', 'DELETE', '/looks', {}, 405],
    ['another method of one record', 'PATCH', `/looks/${crypto.randomUUID()}`, {}, 405],
    ['XML wanted', 'GET', '/looks', { headers: { accept: 'text/xml, application/json;q=0' } }, 406],
    ['a form', 'POST', '/looks', { text: 'a=b', headers: { 'content-type': 'text/plain' } }, 415],
    ['no JSON', 'POST', '/looks', { text: '{' }, 400],
    ['too much', 'POST', '/looks', { text: JSON.stringify('x'.repeat(70_000)) }, 413],
    ['a list', 'POST', '/looks', { text: '[]' }, 422],
    ['a character that cannot be kept', 'POST', '/looks', { text: '{"note":"\\u0000"}' }, 422],
  ] as const)('says of %s what it is', async (_what, method, address, more, status) => {
    const answer = await send(method, address, { token, ...more });
    expect(answer.status).toBe(status);
    expect((await problem(answer)).status).toBe(status);
    if (status === 405) expect(answer.headers.get('allow')).toMatch(/GET|POST/);
  });

  it('tells a token that sends too much when to go on', async () => {
    const busy = await tokenOf(world.people.member, { scope: 'read' });
    const { rows } = await admin.query('select id from api_token order by id desc limit 1');
    // As if it had sent 600 requests, a few seconds from now, so that nothing refills meanwhile.
    const soon = new Date(Date.now() + 10_000);
    for (let request = 0; request < 600; request += 1) expect(passToken(rows[0].id, soon).wait).toBe(0);
    const late = await send('GET', '/sites', { token: busy });
    expect(late.status).toBe(429);
    expect((await problem(late)).type).toBe('tag:pinset,2026:problem/too-many');
    expect(Number(late.headers.get('retry-after'))).toBeGreaterThan(0);
    expect(late.headers.get('ratelimit')).toMatch(/^"token";r=0;t=\d+$/);
    expect(late.headers.get('ratelimit-policy')).toBe('"token";q=600;w=60');
    expect((await send('GET', '/sites', { token })).status).toBe(200);
  });
});

describe('a token', () => {
  it('is stored as a hash alone, and its day of use leaves no history', async () => {
    const secret = await tokenOf(world.people.member);
    await send('GET', '/sites', { token: secret });
    const { rows } = await admin.query(
      `select id, secret_hash, prefix, last_used_on is not null as used, revision from api_token order by id desc limit 1`,
    );
    expect(rows[0]).toMatchObject({ used: true, revision: 1, prefix: secret.slice(0, 13) });
    const found = await admin.query(
      `select count(*)::int as n from history where position($1 in new_values::text) > 0 or position($2 in new_values::text) > 0`,
      [secret.slice(13), rows[0].secret_hash],
    );
    expect(found.rows[0].n).toBe(0);
    const lines = await admin.query('select count(*)::int as n from history where record_id = $1', [
      rows[0].id,
    ]);
    expect(lines.rows[0].n).toBe(1);
  });

  it('cannot be guessed by a near miss', async () => {
    for (const wrong of [`${token.slice(0, -1)}x`, token.slice(0, -1), token.toUpperCase(), 'pinset_', '%'])
      expect((await send('GET', '/sites', { token: wrong })).status).toBe(401);
  });
});
