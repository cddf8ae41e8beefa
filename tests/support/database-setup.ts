import { randomBytes } from 'node:crypto';
import path from 'node:path';
import type { TestProject } from 'vitest/node';
import { holdPrefix, openEmbeddedServer } from '@/lib/database/embedded/embedded-server';
import { dropDatabase, makeDatabase } from '@/lib/database/embedded/scratch-database';
import { asSuperuser, type ServerAccess } from '@/lib/database/embedded/server-access';
import { runMigrations } from '@/lib/database/migrate/run-migrations';

declare module 'vitest' {
  interface ProvidedContext {
    testServer: ServerAccess;
    /** Every database of this run begins with it; the migrated template is named `<run>_template`. */
    testRun: string;
  }
}

const testDataFolder = path.resolve(import.meta.dirname, '../../.pinset/test');

/** Drops the databases of runs that were killed: those whose run no longer holds its connection. */
async function dropAbandoned(access: ServerAccess) {
  const abandoned = await asSuperuser<{ name: string }>(
    access,
    'postgres',
    `SELECT datname AS name FROM pg_database
     WHERE datname ~ '^run_[0-9a-f]{8}_' AND NOT EXISTS (
       SELECT FROM pg_stat_activity WHERE application_name = '${holdPrefix}' || left(pg_database.datname, 12))`,
  );
  for (const { name } of abandoned) await dropDatabase(access, name);
}

/** Starts the server for tests and migrates one template, of which each test file takes a copy. */
export default async function setUp(project: TestProject) {
  const run = `run_${randomBytes(4).toString('hex')}`;
  const server = await openEmbeddedServer(testDataFolder, run);
  const access = { passwords: server.passwords, port: server.port };
  await dropAbandoned(access);
  const { owner } = await makeDatabase(access, `${run}_template`);
  await runMigrations(owner);
  project.provide('testServer', access);
  project.provide('testRun', run);
  return async () => {
    await dropDatabase(access, `${run}_template`);
    await server.release();
  };
}
