import { readFileSync } from 'node:fs';
import path from 'node:path';
import { Client } from 'pg';
import type { RecordTableKind } from '@/lib/growing/record-table-layout';

/** Into which tables the rows of a kind go, those that others refer to first. */
const tablesOf: Readonly<Partial<Record<RecordTableKind, readonly string[]>>> = {
  sites: ['site'],
  substrate_lots: ['substrate_lot'],
  spawn_lots: ['spawn_lot'],
  batches: ['batch', 'batch_component', 'spawn_share'],
  harvests: ['weighing', 'weighing_line', 'weighing_destination'],
  findings: ['finding', 'finding_unit'],
  treatments: ['treatment_run', 'treatment_reading'],
  notebook: ['batch', 'batch_component', 'spawn_share', 'weighing', 'weighing_line', 'finding'],
};

/** A database by its superuser's address, and a folder in which its server may write. */
type Server = { readonly url: string; readonly folder: string };

async function connected<T>(url: string, work: (client: Client) => Promise<T>): Promise<T> {
  const client = new Client({ connectionString: url });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}

/** Writes the rows that a table became to files of the server, in its own folder. */
export async function keepCopies({ url, folder }: Server, kind: RecordTableKind, since: Date): Promise<void> {
  await connected(url, async (client) => {
    for (const table of tablesOf[kind] ?? [])
      await client.query(
        `copy (select * from public.${table} where origin = 'file_import' and created_at >= '${since.toISOString()}')
         to '${fileOf(folder, table)}'`,
      );
  });
}

const fileOf = (folder: string, table: string) => path.join(folder, `bench_${table}.copy`);

/**
 * Copies the kept rows into a database that lacks them, in one transaction and with every constraint and trigger in
 * place, as the superuser, since the database copies nothing into a table with row policies for anybody else.
 */
export async function copyRows(
  { url, folder }: Server,
  kind: RecordTableKind,
  who: { readonly personId: string; readonly networkId: string },
): Promise<{ readonly seconds: number; readonly server: number }> {
  return connected(url, async (client) => {
    const { rows } = await client.query<{ pid: number }>('select pg_backend_pid() as pid');
    const onProcessor = () =>
      Number(readFileSync(`/proc/${rows[0]?.pid}/schedstat`, 'utf8').split(' ')[0]) / 1e9;
    const before = onProcessor();
    const start = performance.now();
    await client.query('begin');
    await client.query(
      `select set_config('app.person_id', $1, true), set_config('app.network_id', $2, true),
        set_config('app.origin', 'file_import', true), set_config('jit', 'off', true)`,
      [who.personId, who.networkId],
    );
    for (const table of tablesOf[kind] ?? [])
      await client.query(`copy public.${table} from '${fileOf(folder, table)}'`);
    await client.query('commit');
    return { seconds: (performance.now() - start) / 1000, server: onProcessor() - before };
  });
}
