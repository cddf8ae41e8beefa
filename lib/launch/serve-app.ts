import { type ChildProcess, spawn } from 'node:child_process';
import { closeSync, openSync, readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { StartProblem } from '@/lib/database/start-problem';
import { inProject } from './project';
import { exitCode } from './run-step';

/** What the application is served with. `log` is a file, or undefined to pass its output on. */
export type Serving = {
  host: string;
  port: number;
  url: string;
  databaseUrl: string;
  secret: string;
  log?: string;
};

/** A running application. */
export type App = { ended: Promise<number>; stop: () => Promise<void> };

/**
 * Megabytes for what a request needs only until it is answered. A page needs some eight; with room for several, most of it
 * is gone before anybody has to look for it.
 */
const youngMegabytes = 32;

const preload = pathToFileURL(inProject('lib/launch/stop-with-parent.mjs')).href;

function launch({ host, port, url, databaseUrl, secret, log }: Serving): ChildProcess {
  const output = log === undefined ? 'inherit' : openSync(log, 'a', 0o600);
  // The owner's address stays with the command: requests never use it.
  const { DATABASE_OWNER_URL: _, ...inherited } = process.env;
  const child = spawn(
    process.execPath,
    [`--max-semi-space-size=${youngMegabytes}`, '--import', preload, 'server.js'],
    {
      cwd: inProject('.next/standalone'),
      stdio: ['ignore', output, output, 'ipc'],
      env: {
        ...inherited,
        NODE_ENV: 'production',
        HOSTNAME: host,
        PORT: String(port),
        DATABASE_URL: databaseUrl,
        NEXTAUTH_URL: url,
        NEXTAUTH_SECRET: secret,
        TZ: 'UTC',
      },
    },
  );
  if (typeof output === 'number') closeSync(output);
  return child;
}

const listens = (child: ChildProcess) =>
  new Promise<true>((resolve) => {
    child.on('message', (message) => {
      if (typeof message === 'object' && message !== null && 'listening' in message) resolve(true);
    });
  });

/**
 * Starts the built application and waits until it listens. That it is this one and not another on the same
 * port is known from its own message, not from an answer on the port.
 */
export async function serveApp(serving: Serving): Promise<App> {
  const child = launch(serving);
  const ended = exitCode(child);
  const listening = await Promise.race([listens(child), ended]);
  if (listening !== true) {
    const said = serving.log
      ? `\n${readFileSync(serving.log, 'utf8').trim().split('\n').slice(-8).join('\n')}`
      : '';
    throw new StartProblem(`The application ended with code ${listening} before it could answer.${said}`);
  }
  const stop = async () => {
    child.kill('SIGTERM');
    const late = setTimeout(() => child.kill('SIGKILL'), 10_000);
    await ended;
    clearTimeout(late);
  };
  return { ended, stop };
}
