import { readFileSync } from 'node:fs';
import { asNobody } from '@/lib/access/scoped-db';

/** Milliseconds of processor time, here and in the database. */
export type ProcessorTime = { readonly here: number; readonly database: number };

/** Nanoseconds on a processor so far, by the kernel of this machine. */
function onProcessor(pid: number): number | undefined {
  try {
    return Number(readFileSync(`/proc/${pid}/schedstat`, 'utf8').split(' ')[0]);
  } catch {
    return undefined;
  }
}

/** The database's processes for this role; they are on this machine, or their time cannot be told. */
export async function databaseSessions(): Promise<number[]> {
  const rows = await asNobody(
    (db) => db.$queryRaw<{ pid: number }[]>`select pid from pg_stat_activity
      where datname = current_database() and usename = current_user`,
  );
  return rows.map(({ pid }) => pid);
}

/**
 * Processor time that something took here and in the database: on a machine that does other work at the same time this
 * says more than the clock does. Undefined where the database is elsewhere.
 */
export async function processorTime(
  pids: readonly number[],
  run: () => Promise<unknown>,
): Promise<ProcessorTime | undefined> {
  const before = pids.map(onProcessor);
  const own = process.cpuUsage();
  await run();
  const { user, system } = process.cpuUsage(own);
  let database = 0;
  for (const [at, pid] of pids.entries()) {
    const [start, end] = [before[at], onProcessor(pid)];
    if (start === undefined || end === undefined) return undefined;
    database += (end - start) / 1e6;
  }
  return { here: (user + system) / 1000, database };
}

/** A clock tick of Linux, in which a process's time is told there. */
const tickMs = 10;

/** Milliseconds on processors so far of a process with all its threads, in steps of ten. */
export function processTime(pid: number): number {
  const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
  // The second field is the name, in brackets, and may hold spaces.
  const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  return tickMs * (Number(fields[11]) + Number(fields[12]));
}
