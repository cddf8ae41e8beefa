import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Client } from 'pg';
import { errorCode } from './error-code';
import { runMigrations } from './migrate/run-migrations';
import { StartProblem } from './start-problem';
import { connectTo } from './startup-check';

const remedy =
  'run `psql -d <database> -f lib/database/roles.sql` once as a superuser, then give both roles a password';

/** Makes the roles where the owner may, and the password in `appUrl` that of a role made now. */
async function ensureRoles(owner: Client, appUrl: string) {
  const { rows } = await owner.query(
    "SELECT FROM pg_roles WHERE rolname IN ('pinset_owner', 'pinset_app', 'pinset_definer')",
  );
  if (rows.length === 3) return;
  const password = decodeURIComponent(new URL(appUrl).password);
  try {
    await owner.query(readFileSync(path.resolve(import.meta.dirname, 'roles.sql'), 'utf8'));
    if (password) await owner.query(`ALTER ROLE pinset_app PASSWORD ${owner.escapeLiteral(password)}`);
  } catch (problem) {
    // 42501: not allowed to.
    if (errorCode(problem) === '42501') throw new StartProblem(`The roles of Pinset are missing: ${remedy}.`);
    throw problem;
  }
}

/**
 * Prepares a server that is not ours, named by DATABASE_OWNER_URL: the roles, then the migrations. Where the
 * owner may not make roles, says what a superuser has to run.
 *
 * @returns the names of the migrations applied now
 */
export async function prepareOutsideServer(ownerUrl: string | undefined, appUrl: string): Promise<string[]> {
  const owner = await connectTo('DATABASE_OWNER_URL', ownerUrl);
  try {
    await ensureRoles(owner, appUrl);
  } finally {
    await owner.end();
  }
  return runMigrations(ownerUrl ?? '');
}
