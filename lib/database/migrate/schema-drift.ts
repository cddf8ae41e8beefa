import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { Pool } from 'pg';
import { openEmbeddedServer } from '../embedded/embedded-server';
import { withScratchDatabase } from '../embedded/scratch-database';
import type { ServerAccess } from '../embedded/server-access';
import { catalogueOf } from './catalogue-adapter';
import { migrationsFolder } from './migration-files';
import { runMigrations } from './run-migrations';
import { compareWithDatamodel, type SchemaDifference } from './schema-engine';

const schemaFile = path.resolve(migrationsFolder, '../schema.prisma');

/** What the migrations of `folder`, applied to an empty database of the server, lack of the schema in `file`. */
export const schemaDrift = (
  access: ServerAccess,
  folder = migrationsFolder,
  file = schemaFile,
): Promise<SchemaDifference> =>
  withScratchDatabase(access, async ({ owner }) => {
    await runMigrations(owner, folder);
    const pool = new Pool({ connectionString: owner, max: 1 });
    try {
      return await compareWithDatamodel(catalogueOf(pool), {
        path: file,
        content: await readFile(file, 'utf8'),
      });
    } finally {
      await pool.end();
    }
  });

/** The same on a server opened for the purpose, whose files are in `dataFolder`. */
export async function schemaDriftOn(dataFolder: string): Promise<SchemaDifference> {
  const server = await openEmbeddedServer(dataFolder, 'schema comparison');
  try {
    return await schemaDrift(server);
  } finally {
    await server.release();
  }
}
