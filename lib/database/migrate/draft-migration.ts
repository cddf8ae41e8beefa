/**
 * For authors: prints the SQL that leads from the migrations to `prisma/schema.prisma`, or with a name writes
 * it as the next migration, to be read and completed by hand (policies, functions, triggers, grants).
 *
 *   node_modules/.bin/tsx lib/database/migrate/draft-migration.ts [name_of_the_change]
 */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { emptyCatalogue } from './catalogue-adapter';
import { compareWithDatamodel } from './schema-engine';

const root = path.resolve(import.meta.dirname, '../../..');

async function draft(name: string | undefined) {
  const schemaPath = path.join(root, 'prisma/schema.prisma');
  const schema = { path: schemaPath, content: await readFile(schemaPath, 'utf8') };
  const { agrees, sql } = await compareWithDatamodel(emptyCatalogue(), schema);
  if (agrees) return console.log('The migrations and prisma/schema.prisma agree: nothing to draft.');
  if (name === undefined) return console.log(sql);

  const stamp = new Date().toISOString().replace(/\D/g, '').slice(0, 14);
  const folder = path.join(root, 'prisma/migrations', `${stamp}_${name}`);
  await mkdir(folder, { recursive: true });
  await writeFile(path.join(folder, 'migration.sql'), sql);
  console.log(`Drafted ${path.relative(root, folder)}/migration.sql: read it and complete it by hand.`);
}

const name = process.argv[2];
if (name !== undefined && !/^[a-z0-9_]+$/.test(name)) {
  console.error('A migration is named in lower case with underscores, for example add_trial_blocks.');
  process.exit(2);
}
await draft(name);
process.exit(0);
