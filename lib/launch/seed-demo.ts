import { existsSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';
import type { EmbeddedServer } from '@/lib/database/embedded/embedded-server';
import { prepareDatabase, recordsDatabase } from '@/lib/database/embedded/prepare-database';
import { dropDatabase } from '@/lib/database/embedded/scratch-database';
import { asSuperuser, type DatabaseUrls } from '@/lib/database/embedded/server-access';
import { runMigrations } from '@/lib/database/migrate/run-migrations';
import { runScript } from './run-step';

const signIns = z.array(
  z.object({ role: z.string(), email: z.string(), password: z.string(), name: z.string() }),
);

/** One way into the demo network. */
export type SignIn = z.infer<typeof signIns>[number];

const signInsFile = (folder: string) => path.join(folder, 'sign-ins.json');

/** The sign-ins that the seed left in `folder`. */
export const readSignIns = (folder: string): SignIn[] =>
  signIns.parse(JSON.parse(readFileSync(signInsFile(folder), 'utf8')));

/**
 * Fills an empty migrated database with the demo network. The seed finds the application's and the owner's
 * addresses in DATABASE_URL and DATABASE_OWNER_URL, and writes as its last act the file named by
 * PINSET_SIGN_INS: a list of { role, email, password, name }.
 */
export async function seed(urls: DatabaseUrls, folder: string, secret: string): Promise<void> {
  await runScript('seed/demo.ts', {
    DATABASE_URL: urls.app,
    DATABASE_OWNER_URL: urls.owner,
    NEXTAUTH_SECRET: secret,
    NEXTAUTH_URL: 'http://localhost:3000',
    PINSET_SIGN_INS: signInsFile(folder),
  });
}

/** Migrates the demo's database and seeds it unless that is done; one whose seed broke off is begun anew. */
export async function prepareDemo(server: EmbeddedServer, folder: string, secret: string): Promise<void> {
  await runMigrations(server.urls.owner);
  const networks = await asSuperuser(server, recordsDatabase, 'SELECT FROM network LIMIT 1');
  if (networks.length > 0 && existsSync(signInsFile(folder))) return;
  if (networks.length > 0) {
    await dropDatabase(server, recordsDatabase);
    await prepareDatabase(server);
    await runMigrations(server.urls.owner);
  }
  rmSync(signInsFile(folder), { force: true });
  console.log('Recording the demo network …');
  await seed(server.urls, folder, secret);
}
