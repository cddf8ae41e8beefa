import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { errorCode } from '../error-code';
import { StartProblem } from '../start-problem';

const isAlive = (pid: number) => {
  try {
    return process.kill(pid, 0);
  } catch (problem) {
    return errorCode(problem) === 'EPERM';
  }
};

const holder = (file: string): number | undefined => {
  try {
    return Number(readFileSync(file, 'utf8')) || undefined;
  } catch (problem) {
    if (errorCode(problem) === 'ENOENT') return undefined;
    throw problem;
  }
};

const take = (file: string): boolean => {
  try {
    writeFileSync(file, String(process.pid), { flag: 'wx' });
    return true;
  } catch (problem) {
    if (errorCode(problem) !== 'EEXIST') throw problem;
    return false;
  }
};

/**
 * Runs `work` while no other process does the same for `folder`, so that two commands started together do not
 * both create or both stop its server. A lock left by a killed process is taken over.
 */
export async function withFolderLock<T>(folder: string, work: () => Promise<T>): Promise<T> {
  mkdirSync(folder, { recursive: true });
  const file = path.join(folder, 'starting.lock');
  const giveUpAt = Date.now() + 120_000;
  while (!take(file)) {
    const pid = holder(file);
    if (pid !== undefined && !isAlive(pid)) rmSync(file, { force: true });
    else if (Date.now() > giveUpAt)
      throw new StartProblem(`Another command is starting the database: wait for it, or remove ${file}.`);
    else await pause(100);
  }
  try {
    return await work();
  } finally {
    rmSync(file, { force: true });
  }
}
