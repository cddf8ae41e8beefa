import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { StartProblem } from '../start-problem';

/** One migration as it lies in its folder; the checksum is the SHA-256 of its text, as Prisma records it. */
export type MigrationFile = { name: string; sql: string; checksum: string };

/** Where the migrations of this project are. */
export const migrationsFolder = path.resolve(import.meta.dirname, '../../../prisma/migrations');

const ownTransaction = /^\s*(begin|commit|rollback|abort|start\s+transaction)(\s+(work|transaction))?\s*;/im;
const functionBody = /\$(\w*)\$[\s\S]*?\$\1\$/g;

/**
 * Reads the migrations of `folder` in the order they apply: `<timestamp>_<name>/migration.sql`.
 * Refuses one that begins or ends a transaction, since each runs inside its own.
 */
export function readMigrations(folder = migrationsFolder): MigrationFile[] {
  const names = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
  return names.map((name) => {
    const sql = readFileSync(path.join(folder, name, 'migration.sql'), 'utf8');
    if (ownTransaction.test(sql.replace(functionBody, '')))
      throw new StartProblem(
        `Migration ${name} begins or ends a transaction of its own: take that statement out.`,
      );
    return { name, sql, checksum: createHash('sha256').update(sql).digest('hex') };
  });
}
