import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { cpus, loadavg, tmpdir } from 'node:os';
import path from 'node:path';
import { stringify } from 'csv-stringify/sync';
import writeXlsx from 'write-excel-file/node';
import type { z } from 'zod';
import { disconnect } from '@/lib/database/client';
import { openEmbeddedServer } from '@/lib/database/embedded/embedded-server';
import { dropDatabase, makeDatabase } from '@/lib/database/embedded/scratch-database';
import { runMigrations } from '@/lib/database/migrate/run-migrations';
import type { RecordTableKind } from '@/lib/growing/record-table-layout';
import { makeNetwork } from '../../../seed/write/make-network';
import { copyRows, keepCopies } from './copy-rows';
import type { importStep, stepTook } from './import-step';
import { type BenchTable, benchTables } from './import-tables';

/** A table goes in within so many times the time of a bare COPY, and the process grows by less than so much. */
const bars = { timesCopy: 10, megabytes: 300 } as const;

type Took = z.output<typeof stepTook>;

function runStep(asked: z.input<typeof importStep>): Took {
  const script = path.join(import.meta.dirname, 'import-step.ts');
  const out = execFileSync(
    process.execPath,
    ['--conditions=react-server', '--import', 'tsx', script, JSON.stringify(asked)],
    { encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'] },
  );
  return JSON.parse(out.slice(out.lastIndexOf('{"id"')));
}

async function written(folder: string, { kind, rows }: BenchTable, format: 'csv' | 'xlsx'): Promise<string> {
  const file = path.join(folder, `${kind}.${format}`);
  if (format === 'csv') writeFileSync(file, stringify(rows.map((row) => [...row])));
  else {
    const cell = (text: string) =>
      /^\d+(\.\d+)?$/.test(text)
        ? { value: Number(text), type: Number }
        : /^\d{4}-\d\d-\d\d$/.test(text)
          ? { value: new Date(`${text}T00:00:00Z`), type: Date, format: 'yyyy-mm-dd' }
          : { value: text, type: String };
    await writeXlsx([{ data: rows.map((row) => row.map(cell)), sheet: 'Rows' }]).toFile(file);
  }
  return file;
}

function line(name: string, { seconds, own, server, grewBy }: Omit<Took, 'id' | 'counts' | 'trouble'>): void {
  const figures = [seconds, own + server, own, server].map((value) => value.toFixed(1).padStart(10));
  const grown = Number.isNaN(grewBy) ? '' : `${grewBy.toFixed(0)} MB`.padStart(10);
  console.log(`${name.padEnd(34)}${figures.join('')}${grown}`);
}

/**
 * Brings tables of so many rows into a fresh network on the embedded server, each step in a process of its own, beside
 * a bare COPY of the very same records into a copy of the database as it was before. Answers whether all kept the bars.
 */
export async function benchImport(rows: number, only: RecordTableKind | undefined): Promise<boolean> {
  const server = await openEmbeddedServer(path.resolve('.pinset/bench'), 'bench');
  const folder = mkdtempSync(path.join(tmpdir(), 'pinset-bench-'));
  const name = `bench_${process.pid}`;
  const access = { passwords: server.passwords, port: server.port };
  try {
    const urls = await makeDatabase(access, name);
    await runMigrations(urls.owner);
    process.env.DATABASE_URL = urls.app;
    process.env.DATABASE_OWNER_URL = urls.owner;
    const { personId, networkId } = await makeNetwork({
      name: 'Bench network',
      code: 'bench',
      coordinator: { name: 'Alder Finch', email: 'bench@network.example' },
      password: 'straw-bucket-lantern',
    });
    await disconnect();
    console.log(
      `load ${loadavg()
        .map((load) => load.toFixed(1))
        .join(' ')} on ${cpus().length} processors; seconds`,
    );
    console.log(
      `${''.padEnd(34)}${['clock', 'processor', 'of node', 'database', 'grew by'].map((head) => head.padStart(10)).join('')}`,
    );
    const within: boolean[] = [];
    const tables = benchTables(rows, only);
    for (const table of tables) {
      const measured = table.kind !== 'sites' && (only === undefined || only === table.kind);
      const formats = measured ? (['xlsx', 'csv'] as const) : (['csv'] as const);
      const grown: number[] = [];
      const steps: Took[] = [];
      for (const format of formats) {
        const file = await written(folder, table, format);
        const kept = runStep({ personId, kind: table.kind, step: 'keep', file });
        if (measured) line(`${table.kind}: kept as ${format}`, kept);
        grown.push(kept.grewBy);
        steps.splice(0, steps.length, kept);
      }
      const id = steps[0]?.id ?? '';
      const checked = runStep({ personId, kind: table.kind, step: 'check', file: id });
      if (measured) line(`${table.kind}: checked`, checked);
      const before = `${name}_before`;
      if (measured) await makeDatabase(access, before, name);
      const since = new Date();
      const added = runStep({ personId, kind: table.kind, step: 'add', file: id });
      if (added.counts.added !== table.rows.length - 1)
        throw new Error(`${table.kind}: ${JSON.stringify({ ...added.counts, trouble: added.trouble })}`);
      if (!measured) continue;
      line(`${table.kind}: added`, added);
      await keepCopies({ url: urls.superuser, folder: server.dataFolder }, table.kind, since);
      const beforeUrl = urls.superuser.replace(`/${name}?`, `/${before}?`);
      const copy = await copyRows({ url: beforeUrl, folder: server.dataFolder }, table.kind, {
        personId,
        networkId,
      });
      await dropDatabase(access, before);
      line(`${table.kind}: bare COPY`, { ...copy, own: 0, grewBy: Number.NaN });
      const all = [...steps, checked, added];
      const clock = all.reduce((sum, { seconds }) => sum + seconds, 0) / copy.seconds;
      const processor = all.reduce((sum, { own, server: there }) => sum + own + there, 0) / copy.server;
      const most = Math.max(...grown, checked.grewBy, added.grewBy);
      const kept = clock <= bars.timesCopy && most < bars.megabytes;
      within.push(kept);
      console.log(
        `${table.kind}: ${table.rows.length - 1} rows, ${clock.toFixed(1)} times the COPY by the clock, ${processor.toFixed(1)} by the processor, at most ${most.toFixed(0)} MB: ${kept ? 'within' : 'ABOVE'}\n`,
      );
    }
    return within.every(Boolean);
  } finally {
    await disconnect();
    await dropDatabase(access, `${name}_before`);
    await dropDatabase(access, name);
    rmSync(folder, { recursive: true, force: true });
    await server.release();
  }
}
