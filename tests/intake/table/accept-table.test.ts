import { beforeAll, expect, it } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { acceptTable } from '@/lib/intake/table/accept-table';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';

const { superuser } = await testDatabase();
let people: Growers;

beforeAll(async () => {
  people = await growers(superuser);
});

/** Posts a table as a browser does, or as the page's own script. */
async function posted(text: string, headers: Readonly<Record<string, string>> = {}) {
  const form = new FormData();
  form.set('kind', 'harvests');
  form.set('siteId', '');
  form.set('file', new Blob([text]), 'harvests.csv');
  const request = new Request('http://localhost:3000/api/import', { method: 'POST', body: form });
  const all = { 'content-length': '500', 'sec-fetch-site': 'same-origin', ...headers };
  for (const [name, value] of Object.entries(all)) request.headers.set(name, value);
  return acceptTable(request, async () => people.member);
}

const table = 'Batch,Date,Fresh (kg)\nOLD-1,2026-05-10,0.9';
const toItsPage = /^\/import\/[\da-f-]{36}$/;
const kept = () => readAs(people.member, ({ db }) => db.intakeFile.count());

it('a table leads a browser to its page, and tells the page’s own script which that is', async () => {
  const browser = await posted(table);
  expect(browser.status).toBe(303);
  expect(browser.headers.get('location')).toMatch(toItsPage);
  const script = await posted(table, { accept: 'application/json' });
  expect(script.status).toBe(200);
  expect(await script.json()).toEqual({ goOnTo: expect.stringMatching(toItsPage) });
});

it('a table that cannot be kept leads back to the form, with what was chosen in the address', async () => {
  const before = await kept();
  const script = await posted('', { accept: 'application/json' });
  const { goOnTo } = (await script.json()) as { goOnTo: string };
  expect(goOnTo).toBe('/import?problem=missing-table&field=file&kind=harvests&site=');
  const foreign = await posted(table, { 'sec-fetch-site': 'cross-site' });
  expect(foreign.headers.get('location')).toContain('problem=other-origin');
  expect(await kept()).toBe(before);
});
