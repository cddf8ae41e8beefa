/**
 * For authors: prints the SQL that leads from the migrations to `prisma/schema.prisma`, or with a name writes
 * it as the next migration, to be read and completed by hand (policies, functions, triggers, grants).
 *
 *   node_modules/.bin/tsx lib/database/migrate/draft-migration.ts [name_of_the_change]
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { migrationsFolder } from './migration-files';
import { schemaDriftOn } from './schema-drift';

const name = process.argv[2];
if (name !== undefined && !/^[a-z0-9_]+$/.test(name)) {
  console.error('A migration is named in lower case with underscores, for example add_trial_blocks.');
  process.exit(2);
}

const { agrees, sql } = await schemaDriftOn(path.resolve(import.meta.dirname, '../../../.pinset/test'));
if (agrees) {
  console.log('The migrations and prisma/schema.prisma agree: nothing to draft.');
} else if (name === undefined) {
  console.log(sql);
} else {
  const stamp = new Date().toISOString().replace(/\D/g, '').slice(0, 14);
  const folder = path.join(migrationsFolder, `${stamp}_${name}`);
  mkdirSync(folder, { recursive: true });
  writeFileSync(path.join(folder, 'migration.sql'), sql);
  console.log(`Drafted ${path.relative('.', folder)}/migration.sql: read it and complete it by hand.`);
}
