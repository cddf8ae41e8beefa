/**
 * One step of bringing a table in, in a process of its own: what it takes of the processor and of memory is this step's
 * alone. Reads what to do as JSON from its argument, writes what it took as JSON.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { z } from 'zod';
import { asNobody, readAs } from '@/lib/access/scoped-db';
import { disconnect } from '@/lib/database/client';
import { recordTableKinds } from '@/lib/growing/record-table-layout';
import { keepFile } from '@/lib/intake/table/keep-file';
import { startJob } from '@/lib/intake/table/start-job';
import { viewFile } from '@/lib/intake/table/view-file';
import { actorOf } from '../../../seed/write/actor-of';
import { benchDay } from './import-tables';

export const importStep = z.object({
  personId: z.string(),
  kind: z.enum(recordTableKinds),
  step: z.enum(['keep', 'check', 'add']),
  /** The file to keep, or the id under which it was kept. */
  file: z.string(),
});

export const stepTook = z.object({
  id: z.string(),
  counts: z.record(z.string(), z.number()),
  trouble: z.string().nullable(),
  seconds: z.number(),
  /** Of the processor, here and in the database. */
  own: z.number(),
  server: z.number(),
  /** By how many megabytes the process grew at most. */
  grewBy: z.number(),
});

const memory = (what: 'VmRSS' | 'VmHWM') =>
  Number(
    new RegExp(`${what}:\\s+(\\d+)`).exec(readFileSync('/proc/self/status', 'utf8'))?.[1] ?? Number.NaN,
  ) / 1024;

/** Seconds that the database's processes for this role have spent on a processor so far. */
async function serverSeconds(): Promise<number> {
  const rows = await asNobody(
    (db) => db.$queryRaw<{ pid: number }[]>`select pid from pg_stat_activity
      where datname = current_database() and usename = current_user`,
  );
  const of = ({ pid }: { pid: number }) =>
    Number(readFileSync(`/proc/${pid}/schedstat`, 'utf8').split(' ')[0]);
  return rows.reduce((sum, row) => sum + of(row), 0) / 1e9;
}

const { personId, kind, step, file } = importStep.parse(JSON.parse(process.argv[2] ?? ''));
const actor = await actorOf(personId);
const begun = await serverSeconds();
// The kernel's mark of the most memory is set to what there is now.
writeFileSync('/proc/self/clear_refs', '5');
const before = memory('VmRSS');
const processor = process.cpuUsage();
const start = performance.now();
let id = file;
if (step === 'keep') {
  const kept = await keepFile(
    actor,
    { kind, siteId: null, fileName: 'bench' },
    new Uint8Array(readFileSync(file)),
  );
  if (kept.kind !== 'ok') throw new Error(JSON.stringify(kept));
  id = kept.value.id;
} else {
  const job = await startJob(actor, id, step, benchDay);
  if (job.kind !== 'ok') throw new Error(JSON.stringify(job));
  await job.value.finished;
}
const seconds = (performance.now() - start) / 1000;
const { user, system } = process.cpuUsage(processor);
const grewBy = memory('VmHWM') - before;
const server = (await serverSeconds()) - begun;
const view = await readAs(actor, (context) => viewFile(context, id, new Date()));
if (!view) throw new Error('the table is gone');
const { counts, trouble } = view;
process.stdout.write(
  JSON.stringify({ id, counts, trouble, seconds, own: (user + system) / 1e6, server, grewBy }),
);
await disconnect();
