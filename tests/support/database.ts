import { randomBytes } from 'node:crypto';
import { afterAll, inject } from 'vitest';
import { dropDatabase, makeDatabase } from '@/lib/database/embedded/scratch-database';
import type { DatabaseUrls } from '@/lib/database/embedded/server-access';

/**
 * Gives the calling test file a migrated database of its own, dropped after its last test. Call it once at the
 * top of the file:
 *
 *     const { app, owner, superuser } = await testDatabase();
 *
 * DATABASE_URL and DATABASE_OWNER_URL of the process name it from then on, so the application's own client
 * reaches it at its first use. `superuser` looks past row-level security: for arranging and for asserting.
 */
export async function testDatabase(): Promise<DatabaseUrls> {
  return takeDatabase(`${inject('testRun')}_template`);
}

/** The same without tables: for tests of the migrations themselves. */
export async function emptyDatabase(): Promise<DatabaseUrls> {
  return takeDatabase(undefined);
}

async function takeDatabase(template: string | undefined) {
  const access = inject('testServer');
  const name = `${inject('testRun')}_${randomBytes(4).toString('hex')}`;
  const urls = await makeDatabase(access, name, template);
  afterAll(() => dropDatabase(access, name));
  process.env.DATABASE_URL = urls.app;
  process.env.DATABASE_OWNER_URL = urls.owner;
  return urls;
}
