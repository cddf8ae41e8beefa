import { type ChildProcess, fork } from 'node:child_process';
import path from 'node:path';
import type { Actor } from '@/lib/access/actor';

const script = path.resolve(import.meta.dirname, 'entry-server.ts');

/** The route of entries in a process of its own, which can be killed and started again. */
export type KillableServer = {
  /** Where it answers; undefined while it is down. */
  readonly port: () => number | undefined;
  readonly start: () => Promise<void>;
  /** Kill -9: no handler runs and no connection is closed in order. */
  readonly kill: () => Promise<void>;
  /** Ends it and the one kept ready. */
  readonly end: () => Promise<void>;
};

type Running = { readonly child: ChildProcess; readonly port: Promise<number> };

/** `bug`: a fault planted on purpose, '' for none. One process is always kept ready, so that a start takes no time. */
export function killableServer(url: string, people: readonly Actor[], bug: string): KillableServer {
  let running: { child: ChildProcess; port: number } | undefined;
  let spare: Running | undefined;

  const prepare = (): Running => {
    const child = fork(script, [], {
      execArgv: ['--conditions=react-server', '--import', 'tsx'],
      stdio: ['ignore', 'ignore', process.env.SHOW_SERVER ? 'inherit' : 'ignore', 'ipc'],
      env: {
        ...process.env,
        DATABASE_URL: url,
        PEOPLE: JSON.stringify(people),
        BUG: bug,
        NEXTAUTH_URL: 'http://localhost:3000',
        NEXTAUTH_SECRET: 'a secret for tests, of 32 letters and more',
      },
    });
    const port = new Promise<number>((resolve, reject) => {
      child.once('message', (message: { port: number }) => resolve(message.port));
      child.once('exit', (code) => reject(new Error(`the server of entries ended with ${code}`)));
    });
    // Whoever starts it hears of a failure; a spare that is never started may end as it likes.
    port.catch(() => undefined);
    return { child, port };
  };
  const end = async (child: ChildProcess) => {
    if (child.exitCode !== null || child.signalCode !== null) return;
    const gone = new Promise((resolve) => child.once('exit', resolve));
    child.kill('SIGKILL');
    await gone;
  };

  return {
    port: () => running?.port,
    start: async () => {
      const { child, port } = spare ?? prepare();
      running = { child, port: await port };
      spare = prepare();
    },
    kill: async () => {
      const dying = running;
      running = undefined;
      if (dying) await end(dying.child);
    },
    end: async () => {
      const all = [running?.child, spare?.child];
      running = undefined;
      spare = undefined;
      for (const child of all) if (child) await end(child);
    },
  };
}
