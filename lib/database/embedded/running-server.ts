import { readdirSync, readFileSync, readlinkSync, realpathSync, rmSync } from 'node:fs';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { Client } from 'pg';
import { errorCode } from '../error-code';
import { StartProblem } from '../start-problem';

const lockFile = (dataFolder: string) => path.join(dataFolder, 'postmaster.pid');

/** The port in the server's lock file: of a server that runs, or of one that was killed. */
export function lastPort(dataFolder: string): number | undefined {
  try {
    return Number(readFileSync(lockFile(dataFolder), 'utf8').split('\n')[3]) || undefined;
  } catch (problem) {
    if (errorCode(problem) === 'ENOENT') return undefined;
    throw problem;
  }
}

/**
 * Asks the server behind `url` whether it serves `dataFolder`: 'ours', 'starting' (ask again), or 'absent'
 * (nobody answers, or somebody else does).
 */
export async function whoAnswers(url: string, dataFolder: string): Promise<'ours' | 'starting' | 'absent'> {
  const client = new Client({ connectionString: url, connectionTimeoutMillis: 5_000 });
  // A server that is killed between the answer and the farewell reports it here and nowhere else.
  client.on('error', () => {});
  try {
    await client.connect();
    const { rows } = await client.query<{ folder: string }>(
      "SELECT current_setting('data_directory') AS folder",
    );
    return realpathSync(rows[0]?.folder ?? '/') === realpathSync(dataFolder) ? 'ours' : 'absent';
  } catch (problem) {
    // 57P03: starting up, recovering or shutting down.
    return errorCode(problem) === '57P03' ? 'starting' : 'absent';
  } finally {
    await client.end();
  }
}

const workingFolder = (pid: string): string | undefined => {
  try {
    return readlinkSync(`/proc/${pid}/cwd`);
  } catch {
    // Gone meanwhile, a zombie, or another account's: in no case a server of ours at work.
    return undefined;
  }
};

const processesIn = (folder: string): string[] =>
  process.platform === 'linux'
    ? readdirSync('/proc').filter((name) => /^\d+$/.test(name) && workingFolder(name) === folder)
    : [];

/**
 * Removes the lock file of a server that was killed. PostgreSQL does so itself, unless the number in it has
 * meanwhile gone to another process of the same account; then it would refuse to start for ever. Processes of
 * the killed server that are still ending are waited for.
 */
export async function clearStaleLock(dataFolder: string): Promise<void> {
  if (lastPort(dataFolder) === undefined) return;
  const folder = realpathSync(dataFolder);
  const giveUpAt = Date.now() + 20_000;
  while (processesIn(folder).length > 0) {
    if (Date.now() > giveUpAt)
      throw new StartProblem(
        `PostgreSQL process ${processesIn(folder)[0]} holds ${folder} but does not answer: end it and start again.`,
      );
    await pause(100);
  }
  if (process.platform === 'linux') rmSync(lockFile(dataFolder), { force: true });
}
