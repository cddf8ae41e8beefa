import { Client } from 'pg';
import { afterAll, beforeAll, beforeEach } from 'vitest';
import type { Entry } from '@/lib/offline/entry';
import { startBags } from './bags';
import { testDatabase } from './database';
import { harvestEntry, postEntry, testSettings } from './entries';
import { type Growers, growers } from './growers';
import { type Shed, shed } from './shed';

/**
 * A database with growers and a shed, and a new batch of twenty bags before each test, for what phones send. Call it
 * once at the top of a file; what it answers is filled in before the tests run.
 */
export async function entryWorld() {
  const { superuser } = await testDatabase();
  const admin = new Client({ connectionString: superuser });
  const world = {} as { people: Growers; stock: Shed; batchId: string };
  beforeAll(async () => {
    testSettings();
    await admin.connect();
    world.people = await growers(superuser);
    world.stock = await shed(world.people);
  });
  beforeEach(async () => {
    world.batchId = await startBags(world.people, world.stock);
  });
  afterAll(() => admin.end());
  return {
    world,
    admin,
    post: (entry: Entry, who = world.people.member, headers: Record<string, string> = {}) =>
      postEntry(entry, who, headers),
    harvest: (changes: Partial<Entry> = {}) => harvestEntry(world.people.member, world.batchId, changes),
    withMass: (text: string) => ({
      weighedOn: '2026-05-10',
      fresh: { text, unit: 'kg' },
      lines: [{ batchId: world.batchId, flush: 1 }],
    }),
    count: async (sql: string, values: readonly unknown[]): Promise<number> => {
      const { rows } = await admin.query(`select count(*)::int as n from ${sql}`, [...values]);
      return rows[0]?.n;
    },
  };
}
