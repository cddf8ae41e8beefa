import { readdirSync } from 'node:fs';
import path from 'node:path';
import { createTranslator } from 'use-intl/core';
import { beforeAll, expect, it, vi } from 'vitest';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { testDatabase } from '../support/database';
import { makeWorld, type World } from './world';

/** What a page does instead of answering; no error. */
const elsewhere = vi.hoisted(() => new Error('somewhere else'));
const reader = vi.hoisted((): { actor?: unknown } => ({}));
vi.mock('@/lib/access/current', () => ({
  currentSigned: async () => ({ person: reader.actor, actor: reader.actor }),
  currentActor: async () => reader.actor,
  requirePerson: async () => reader.actor,
  requireActor: async () => reader.actor,
}));
vi.mock('next/navigation', () => {
  const leave = () => {
    throw elsewhere;
  };
  return { redirect: leave, permanentRedirect: leave, notFound: leave };
});
// What a request leaves to be done after its answer: fits of models.
vi.mock('next/server', async (actual) => ({ ...(await actual<object>()), after: () => undefined }));
vi.mock('next-intl/server', () => ({
  getLocale: async () => 'en-US',
  getMessages: async () => loadMessages('en'),
  getTranslations: async (namespace: never) =>
    createTranslator({ locale: 'en-US', messages: loadMessages('en'), namespace }),
}));

vi.setConfig({ testTimeout: 600_000 });
const { superuser } = await testDatabase();
const root = path.resolve(import.meta.dirname, '../../app');
let world: World;
beforeAll(async () => {
  world = await makeWorld(superuser);
  reader.actor = world.people.coordinator;
}, 180_000);

const id = '01a2176f-b6e8-75ac-859c-c830d90031f7';
const odd = ['-'.repeat(36), '0'.repeat(36), '\0', 'x'.repeat(2000), '9'.repeat(20)];
const oddPlaces = [...odd, `2026-01-01_${odd[0]}`, `2026-99-99_${id}`, `0000-01-01_${id}`];
const names = ['after', 'before', 'site', 'batch', 'of', 'method', 'species', 'finding', 'from', 'to', 'at'];
/** Words of an address that say of what kind the record is. */
const kinds: Readonly<Record<string, string>> = {
  '(signed)/trace/[kind]': 'batch',
  '(signed)/void/[kind]': 'batch',
  '(signed)/words/[kind]': 'batch',
  '(signed)/lot-notices/new/[kind]': 'spawn-lot',
  '(signed)/costs/[of]': 'batch',
};

type Asked = Readonly<Record<string, string>>;
type Page = {
  default?: (props: { params: Promise<unknown>; searchParams: Promise<Asked> }) => unknown;
  GET?: (request: Request, props: { params: Promise<unknown> }) => Promise<Response>;
};

const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((file) => ['page.tsx', 'route.ts'].includes(path.basename(file)))
  // Sign-in is the library's; the worker of phones and the document of the API are the same at any address.
  .filter((file) => !/^(api.auth|sw\.js|api.v1.openapi|.help..help.api)/.test(file))
  .map((file) => file.split(path.sep).join('/'))
  .sort();

/** What stands in an address for each name in brackets. */
function paramsOf(file: string, word: string, above: Asked): Record<string, string | string[]> {
  const params: Record<string, string | string[]> = {};
  for (const [part = '', rest, name = ''] of file.matchAll(/\[(\.\.\.)?(\w+)\]/g)) {
    const folder = file.slice(0, file.indexOf(part) + part.length);
    const said = kinds[folder] ?? above[folder] ?? word;
    params[name] = rest === undefined ? said : [said];
  }
  return params;
}

/** What went wrong, or nothing. */
async function trouble(page: Page, params: unknown, asked: Asked): Promise<string | undefined> {
  try {
    if (page.default)
      await page.default({ params: Promise.resolve(params), searchParams: Promise.resolve(asked) });
    const address = `http://localhost/?${new URLSearchParams(asked)}`;
    const answer = await page.GET?.(new Request(address), { params: Promise.resolve(params) });
    return answer !== undefined && answer.status >= 500 ? String(answer.status) : undefined;
  } catch (error) {
    if (error === elsewhere) return undefined;
    return error instanceof Error ? error.message.slice(-200) : String(error);
  }
}

it('has no page and no file that fails at an address that names nothing', async () => {
  const { millLane } = world.people;
  const above: Asked = { '(signed)/batches/[id]': world.batch, '(signed)/sites/[id]': millLane };
  const wrong: string[] = [];
  for (const file of files) {
    const page: Page = await import(path.join(root, file));
    const ways = file.includes('[') ? [{}, above] : [];
    for (const there of ways)
      for (const word of odd) {
        const said = await trouble(page, paramsOf(file, word, there), {});
        if (said !== undefined) wrong.push(`${file} ${word.slice(0, 40)}: ${said}`);
      }
  }
  expect(wrong).toEqual([]);
});

it('has no list that fails at a place or a filter that is none', async () => {
  const { millLane } = world.people;
  const above: Asked = {
    '(signed)/batches/[id]': world.batch,
    '(signed)/sites/[id]': millLane,
    'api/v1/[...path]': 'batches',
    '(signed)/export/[file]': 'batches.csv',
  };
  const wrong: string[] = [];
  for (const file of files) {
    const params = paramsOf(file, '', above);
    if (Object.values(params).some((value) => value === '')) continue;
    const page: Page = await import(path.join(root, file));
    for (const place of oddPlaces) {
      // What goes back from a place does not go on from one.
      const asked = place.includes('_') ? [names, names.filter((name) => name !== 'before')] : [names];
      for (const some of asked) {
        const said = await trouble(page, params, Object.fromEntries(some.map((name) => [name, place])));
        if (said !== undefined) wrong.push(`${file} ${place.slice(0, 50)}: ${said}`);
      }
    }
  }
  expect(wrong).toEqual([]);
});
