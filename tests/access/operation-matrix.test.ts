import { readdirSync } from 'node:fs';
import path from 'node:path';
import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { testDatabase } from '../support/database';
import { commandRows } from './command-rows';
import { askers, type OperationRow } from './operation-rows';
import { queryRows } from './query-rows';
import { makeWorld, type World } from './world';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let world: World;

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
});
afterAll(() => admin.end());

const rows: readonly OperationRow[] = [...queryRows, ...commandRows];
const lib = path.resolve(import.meta.dirname, '../../lib');

function operations(): string[] {
  return ['records', 'report'].flatMap((folder) =>
    readdirSync(path.join(lib, folder), { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.(command|query)\.ts$/.test(file))
      .map((file) => `${folder}/${file.replace(/\.ts$/, '')}`),
  );
}

/** How many lines the history of Larkmoor has: a refused attempt leaves none. */
async function larkmoorHistory(): Promise<number> {
  const { rows: counted } = await admin.query(
    'select count(*)::int as n from history where network_id = $1',
    [world.people.coordinator.networkId],
  );
  return Number(counted[0]?.n);
}

it('has a row for every command and every query', () => {
  const listed = new Set(rows.map((row) => row.file));
  expect(operations().filter((file) => !listed.has(file))).toEqual([]);
  expect([...listed].filter((file) => !operations().includes(file))).toEqual([]);
});

describe.each(rows)('$file ($may)', (row) => {
  // The refused are tried first, so that nobody who may has changed the record under them.
  const order = [...askers.keys()].sort(
    (a, b) => (row.may[a] === 'y' ? 1 : 0) - (row.may[b] === 'y' ? 1 : 0),
  );
  it.each(order.map((index) => [askers[index] ?? 'funder', row.may[index] ?? '-'] as const))(
    '%s: %s',
    async (who, may) => {
      const prepared = await row.prepare(world, world.people[who]);
      const before = await larkmoorHistory();
      const done = await row.attempt(world, world.people[who], prepared);
      expect(done).toBe(may !== '-');
      if (may !== 'y') expect(await larkmoorHistory()).toBe(before);
    },
  );
});
