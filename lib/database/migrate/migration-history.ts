import type { ClientBase } from 'pg';
import { StartProblem } from '../start-problem';
import type { MigrationFile } from './migration-files';

/** What the database remembers of one migration; neither finished nor rolled back means half-applied. */
type Recorded = { name: string; checksum: string; finished: boolean };

/** The migrations recorded in the database, oldest first; none where the table does not exist yet. */
async function recordedMigrations(client: ClientBase): Promise<Recorded[]> {
  const { rows: tables } = await client.query<{ exists: boolean }>(
    "SELECT to_regclass('public._prisma_migrations') IS NOT NULL AS exists",
  );
  if (!tables[0]?.exists) return [];
  const { rows } = await client.query<Recorded>(
    `SELECT migration_name AS name, checksum, finished_at IS NOT NULL AS finished
     FROM public._prisma_migrations WHERE rolled_back_at IS NULL ORDER BY migration_name`,
  );
  return rows;
}

/**
 * The migrations of `files` that the database still lacks. Throws a {@link StartProblem} when its history is
 * not a beginning of `files`: one half-applied, edited after it was applied, unknown, or to be applied before
 * another that already is.
 */
export async function missingMigrations(
  client: ClientBase,
  files: MigrationFile[],
): Promise<MigrationFile[]> {
  const recorded = await recordedMigrations(client);
  for (const { name, checksum, finished } of recorded) {
    const file = files.find((candidate) => candidate.name === name);
    if (!finished)
      throw new StartProblem(`Migration ${name} is half-applied in this database: restore the last backup.`);
    if (!file)
      throw new StartProblem(
        `Migration ${name} is in this database but not in this version: use the newer version.`,
      );
    if (file.checksum !== checksum)
      throw new StartProblem(`Migration ${name} was edited after it was applied: restore its file.`);
  }
  const applied = new Set(recorded.map(({ name }) => name));
  const missing = files.filter(({ name }) => !applied.has(name));
  const last = recorded.at(-1);
  const late = missing.find(({ name }) => last !== undefined && name < last.name);
  if (late)
    throw new StartProblem(
      `Migration ${late.name} sorts before ${last?.name}, which is applied: give it a later date.`,
    );
  return missing;
}
