import { existsSync } from 'node:fs';
import type { EmbeddedServer } from '@/lib/database/embedded/embedded-server';
import { isFree } from '@/lib/database/embedded/free-port';
import { runMigrations } from '@/lib/database/migrate/run-migrations';
import { prepareOutsideServer } from '@/lib/database/outside-server';
import { StartProblem } from '@/lib/database/start-problem';
import { checkDatabase } from '@/lib/database/startup-check';
import { buildApp } from './build-app';
import { holdApp, holdDatabase, keepServing } from './keep-serving';
import { dataFolder, inProject } from './project';
import { runScript } from './run-step';
import { type StartSettings, startSettings } from './start-settings';

type Database = { app: string; owner: string; embedded?: EmbeddedServer };

/** The database to serve from, migrated: the one the environment names, or the embedded one. */
async function prepareDatabase({ databaseUrl, ownerUrl }: StartSettings): Promise<Database> {
  if (databaseUrl !== undefined && ownerUrl !== undefined) {
    await prepareOutsideServer(ownerUrl, databaseUrl);
    return { app: databaseUrl, owner: ownerUrl };
  }
  const embedded = await holdDatabase(dataFolder('live'), 'start');
  await runMigrations(embedded.urls.owner);
  console.log(`DATABASE_URL is not set: the records are kept in ${embedded.dataFolder}. Back them up.`);
  return { ...embedded.urls, embedded };
}

/** `npm start`: serves the real thing with what the environment, or a file .env, says. */
export async function runStart(): Promise<number> {
  if (existsSync(inProject('.env'))) process.loadEnvFile(inProject('.env'));
  const settings = startSettings(process.env);
  const { host, port, url, secret } = settings;
  if (!(await isFree(port))) throw new StartProblem(`Port ${port} is taken: end what uses it, or set PORT.`);
  const { app: databaseUrl, owner, embedded } = await prepareDatabase(settings);
  await checkDatabase(databaseUrl);
  await buildApp();
  const app = await holdApp({ host, port, url, databaseUrl, secret });
  await runScript('lib/launch/first-link.ts', {
    DATABASE_URL: databaseUrl,
    DATABASE_OWNER_URL: owner,
    NEXTAUTH_URL: url,
  });
  if (embedded) return keepServing(app, embedded, dataFolder('live'), 'start');
  throw new StartProblem(`The application ended with code ${await app.ended}.`);
}
