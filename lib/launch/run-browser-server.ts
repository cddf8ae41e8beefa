import { randomBytes } from 'node:crypto';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { hashToken, newToken } from '@/lib/access/token';
import { dropDatabase, makeDatabase } from '@/lib/database/embedded/scratch-database';
import { runMigrations } from '@/lib/database/migrate/run-migrations';
import { connectTo } from '@/lib/database/startup-check';
import { appSecret } from './app-secret';
import { buildApp } from './build-app';
import { holdApp, holdDatabase } from './keep-serving';
import { dataFolder, inProject } from './project';
import { seed } from './seed-demo';
import { beforeExit } from './shut-down';

/** Leaves the address of a first coordinator's one-time link in `setup-link.txt`: a demo shows none, its form is tested too. */
async function leaveSetupLink(ownerUrl: string, folder: string): Promise<void> {
  const owner = await connectTo('DATABASE_OWNER_URL', ownerUrl);
  try {
    const token = newToken();
    await owner.query("SELECT app.make_setup_link($1, '1 day')", [hashToken(token)]);
    writeFileSync(path.join(folder, 'setup-link.txt'), `/setup/${token}\n`);
  } finally {
    await owner.end();
  }
}

/** Serves a freshly seeded demo network on PINSET_TEST_PORT until a signal comes, and drops it again. */
export async function runBrowserServer(): Promise<number> {
  const port = Number(process.env.PINSET_TEST_PORT);
  const folder = path.dirname(inProject(process.env.PINSET_SIGN_INS ?? ''));
  mkdirSync(folder, { recursive: true });
  beforeExit(() => rmSync(folder, { recursive: true }));

  // Named like the databases of the other tests, which clear away what killed runs leave behind.
  const run = `run_${randomBytes(4).toString('hex')}`;
  const server = await holdDatabase(dataFolder('test'), run);
  const urls = await makeDatabase(server, `${run}_browser`);
  beforeExit(() => dropDatabase(server, `${run}_browser`));
  await runMigrations(urls.owner);
  const secret = appSecret(folder);
  await seed(urls, folder, secret);
  await leaveSetupLink(urls.owner, folder);
  await buildApp();

  const url = `http://localhost:${port}`;
  const log = inProject('.pinset/test/app.log');
  const app = await holdApp({ host: '127.0.0.1', port, url, databaseUrl: urls.app, secret, log });
  return app.ended;
}
