import { readFileSync } from 'node:fs';
import { asNobody } from '@/lib/access/scoped-db';

/** Nanoseconds on a processor so far, by the kernel of this machine. */
function onProcessor(pid: number): number | undefined {
  try {
    return Number(readFileSync(`/proc/${pid}/schedstat`, 'utf8').split(' ')[0]);
  } catch {
    return undefined;
  }
}

/** The database's processes for this role; they are on this machine, or their time cannot be told. */
async function sessions(): Promise<number[]> {
  const rows = await asNobody(
    (db) => db.$queryRaw<{ pid: number }[]>`select pid from pg_stat_activity
      where datname = current_database() and usename = current_user`,
  );
  return rows.map(({ pid }) => pid);
}

/**
 * Milliseconds of processor time that something took here and in the database: on a machine that does other work at the
 * same time this says more than the clock does. Undefined where the database is elsewhere.
 */
export async function processorTime(run: () => Promise<unknown>): Promise<number | undefined> {
  const pids = await sessions();
  const before = pids.map(onProcessor);
  const own = process.cpuUsage();
  await run();
  const { user, system } = process.cpuUsage(own);
  let total = (user + system) / 1000;
  for (const [at, pid] of pids.entries()) {
    const [start, end] = [before[at], onProcessor(pid)];
    if (start === undefined || end === undefined) return undefined;
    total += (end - start) / 1e6;
  }
  return total;
}
