import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { closeSync, openSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { freePort, isFree } from './free-port';
import type { Passwords } from './passwords';
import { clearStaleLock, lastPort, whoAnswers } from './running-server';
import { databaseUrls } from './server-access';
import type { ServerHome } from './server-home';

const firstPort = 54_320;

const lastLines = (log: string) => readFileSync(log, 'utf8').trim().split('\n').slice(-5).join('\n');

function launch({ programs, dataFolder, account }: ServerHome, port: number, log: string): ChildProcess {
  const output = openSync(log, 'a', 0o600);
  const server = spawn(
    programs.postgres,
    // The socket folder is left out: it would have to be writable for the server's account.
    [
      '-D',
      dataFolder,
      '-p',
      String(port),
      '-c',
      'listen_addresses=127.0.0.1',
      '-c',
      'unix_socket_directories=',
      '-c',
      'timezone=UTC',
      '-c',
      'log_timezone=UTC',
    ],
    { detached: true, stdio: ['ignore', output, output], cwd: dataFolder, ...account },
  );
  closeSync(output);
  server.unref();
  return server;
}

/** Waits for the server on `port`; false when `hasEnded` first, or when it does not answer within a minute. */
async function becomesReady(url: string, dataFolder: string, hasEnded: () => boolean): Promise<boolean> {
  const giveUpAt = Date.now() + 60_000;
  while (!hasEnded() && Date.now() < giveUpAt) {
    if ((await whoAnswers(url, dataFolder)) === 'ours') return true;
    await pause(30);
  }
  return false;
}

/** The port of the server of `home`, which is started unless it runs. Survives the process that started it. */
export async function startServer(home: ServerHome, passwords: Passwords, folder: string): Promise<number> {
  const urlOn = (port: number) => databaseUrls({ passwords, port }, 'postgres').superuser;
  const earlier = lastPort(home.dataFolder);
  if (earlier !== undefined) {
    const answer = await whoAnswers(urlOn(earlier), home.dataFolder);
    const ready = answer === 'starting' && (await becomesReady(urlOn(earlier), home.dataFolder, () => false));
    if (answer === 'ours' || ready) return earlier;
    await clearStaleLock(home.dataFolder);
  }

  const log = path.join(folder, 'postgres.log');
  // The earlier port first, so that pools which are still open find the server again.
  let port = earlier !== undefined && (await isFree(earlier)) ? earlier : await freePort(firstPort);
  for (let attempt = 0; attempt < 5; attempt += 1) {
    const server = launch(home, port, log);
    let failure: string | undefined;
    server.once('error', (problem) => {
      failure = problem.message;
    });
    const hasEnded = () => failure !== undefined || server.exitCode !== null || server.signalCode !== null;
    if (await becomesReady(urlOn(port), home.dataFolder, hasEnded)) return port;
    if (failure !== undefined) throw new Error(`PostgreSQL could not be run: ${failure}`);
    if (!/could not (bind|create any TCP)/.test(lastLines(log)))
      throw new Error(`PostgreSQL did not start. The end of ${log}:\n${lastLines(log)}`);
    // Somebody took the port between the look and the start.
    port = await freePort(port + 1);
  }
  throw new Error('PostgreSQL found no free port in five attempts');
}

/** Stops the server of `home` and waits until it has written everything; its clients are disconnected. */
export function stopServer({ programs, dataFolder, account }: ServerHome) {
  const stopped = spawnSync(programs.pgCtl, ['stop', '-D', dataFolder, '-m', 'fast', '-w'], {
    encoding: 'utf8',
    cwd: dataFolder,
    ...account,
  });
  if (stopped.status !== 0)
    throw new Error(`PostgreSQL did not stop: ${stopped.error?.message ?? stopped.stderr}`);
}
