import type { ReadContext } from '@/lib/access/context';
import { packageTableNames } from '../package/package-tables';
import { readColumns } from '../package/read-columns';

export type PersonTable = {
  readonly name: string;
  readonly columns: readonly string[];
  readonly rows: readonly (string | null)[][];
};

const changeColumns = ['at', 'table', 'record_id', 'action', 'new_values', 'reason'] as const;

function asText(value: unknown): string | null {
  if (value === null || value === undefined) return null;
  return typeof value === 'string' ? value : JSON.stringify(value);
}

/**
 * What a person recorded in the network, a table at a time, and last their changes. The database decides who may ask:
 * the person, or a coordinator for one who leaves.
 */
export async function* personTables(context: ReadContext, personId: string): AsyncGenerator<PersonTable> {
  const rowsOf = (table: string) =>
    context.db.$queryRaw<{ row: Record<string, unknown> }[]>`
      select row from app.recorded_by(${personId}::uuid, ${table}) as row`;
  for (const name of packageTableNames) {
    const rows = await rowsOf(name);
    if (rows.length === 0) continue;
    const columns = (await readColumns(context, name)).columns.map(({ column }) => column);
    yield { name, columns, rows: rows.map(({ row }) => columns.map((column) => asText(row[column]))) };
  }
  const changes = await rowsOf('history');
  yield {
    name: 'changes',
    columns: changeColumns,
    rows: changes.map(({ row }) => changeColumns.map((column) => asText(row[column]))),
  };
}
