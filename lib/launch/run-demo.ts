import path from 'node:path';
import { freePort, isFree } from '@/lib/database/embedded/free-port';
import { appSecret } from './app-secret';
import { buildApp, generateClient } from './build-app';
import { holdApp, holdDatabase, keepServing } from './keep-serving';
import { dataFolder } from './project';
import { prepareDemo, readSignIns, type SignIn } from './seed-demo';

/** The port wished for, or the next free one, which is then said. */
export async function choosePort(): Promise<number> {
  const wished = Number(process.env.PORT ?? 3000);
  if (await isFree(wished)) return wished;
  const port = await freePort(wished + 1);
  console.log(`Port ${wished} is taken; using ${port}.`);
  return port;
}

const oneOfEachRole = (all: SignIn[]) =>
  all.filter(({ role }, at) => all.findIndex((s) => s.role === role) === at);

/** Says where the demo is and how to sign in as each role. */
export function announce(url: string, folder: string) {
  const rows = oneOfEachRole(readSignIns(folder)).map(
    ({ role, email, password }) => [role, email, password] as const,
  );
  const width = (column: 0 | 1) => Math.max(...rows.map((row) => row[column].length)) + 2;
  console.log(`\nPinset is at ${url}\n\nSign in as`);
  for (const [role, email, password] of rows)
    console.log(`  ${role.padEnd(width(0))}${email.padEnd(width(1))}${password}`);
  console.log('\nCtrl-C stops it; the data stays.');
}

/** `npm run demo`: everything from a fresh clone to an address in the browser. */
export async function runDemo(): Promise<number> {
  const folder = dataFolder('demo');
  await generateClient();
  const server = await holdDatabase(folder, 'demo');
  const secret = appSecret(folder);
  await prepareDemo(server, folder, secret);
  await buildApp();
  const port = await choosePort();
  const url = `http://localhost:${port}`;
  const host = process.env.HOST ?? '127.0.0.1';
  const app = await holdApp({
    host,
    port,
    url,
    databaseUrl: server.urls.app,
    secret,
    log: path.join(folder, 'app.log'),
  });
  announce(url, folder);
  console.log(`Ready after ${process.uptime().toFixed(1)} s.`);
  return keepServing(app, server, folder, 'demo');
}
