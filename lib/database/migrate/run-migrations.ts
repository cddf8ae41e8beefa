import { randomUUID } from 'node:crypto';
import { Client } from 'pg';
import { errorCode } from '../error-code';
import { StartProblem } from '../start-problem';
import { type MigrationFile, migrationsFolder, readMigrations } from './migration-files';
import { missingMigrations } from './migration-history';

/** Prisma's own key, so that its tools and this runner keep out of each other's way. */
const advisoryLockKey = 72_707_369;

const historyTable = `
  CREATE TABLE IF NOT EXISTS public._prisma_migrations (
    id varchar(36) PRIMARY KEY NOT NULL,
    checksum varchar(64) NOT NULL,
    finished_at timestamptz,
    migration_name varchar(255) NOT NULL,
    logs text,
    rolled_back_at timestamptz,
    started_at timestamptz NOT NULL DEFAULT now(),
    applied_steps_count integer NOT NULL DEFAULT 0
  );
  GRANT SELECT ON public._prisma_migrations TO pinset_app;`;

async function apply(client: Client, { name, sql, checksum }: MigrationFile) {
  await client.query('BEGIN');
  try {
    // A migration that waits for a lock makes everybody behind it wait: better to give up and try again.
    await client.query("SET LOCAL lock_timeout = '10s'");
    await client.query(sql);
    await client.query(
      `INSERT INTO public._prisma_migrations (id, checksum, migration_name, started_at, finished_at, applied_steps_count)
       VALUES ($1, $2, $3, now(), clock_timestamp(), 1)`,
      [randomUUID(), checksum, name],
    );
    await client.query('COMMIT');
  } catch (problem) {
    await client.query('ROLLBACK');
    throw new StartProblem(`Migration ${name} failed and left nothing behind: ${String(problem)}`, {
      cause: problem,
    });
  }
}

/**
 * Brings the database behind `ownerUrl` up to date: every migration of `folder` it lacks, in order, each in one
 * transaction together with its entry in Prisma's `_prisma_migrations`. Of two runners started together one
 * waits. Needs the roles of roles.sql.
 *
 * @returns the names of the migrations applied now
 * @throws {StartProblem} when the history of the database does not fit the files, or one fails
 */
export async function runMigrations(ownerUrl: string, folder = migrationsFolder): Promise<string[]> {
  const files = readMigrations(folder);
  const client = new Client({ connectionString: ownerUrl, application_name: 'pinset migrations' });
  await client.connect();
  try {
    await client.query("SET lock_timeout = '60s'");
    await client.query('SELECT pg_advisory_lock($1)', [advisoryLockKey]);
    const missing = await missingMigrations(client, files);
    if (missing.length > 0) await client.query(historyTable);
    for (const file of missing) await apply(client, file);
    return missing.map(({ name }) => name);
  } catch (problem) {
    // 55P03: the lock was not to be had in time.
    if (errorCode(problem) === '55P03')
      throw new StartProblem('Another process is migrating this database: start again when it has finished.');
    throw problem;
  } finally {
    await client.end();
  }
}
