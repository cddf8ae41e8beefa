import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { unguardFormula } from '@/lib/base/formula-guard';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { OpenedPackage } from './open-package';
import { packageTableNames } from './package-tables';
import { readColumns, type StoredTable } from './read-columns';

type Row = Readonly<Record<string, string | null>>;

/** A row as JSON for the database: text without the apostrophe before formulas, JSON as JSON. */
function asStored(table: StoredTable, row: Row): Record<string, unknown> {
  return Object.fromEntries(
    table.columns.map(({ column, type, categories }) => {
      const cell = row[column] ?? null;
      if (cell === null) return [column, null];
      if (type === 'object' || type === 'array') return [column, JSON.parse(cell) as unknown];
      return [column, type === 'string' && categories === null ? unguardFormula(cell) : cell];
    }),
  );
}

/** Inserts rows with their own ids; who recorded them is whoever loads them, since people are not in an archive. */
async function insertRows(
  { db, actor }: WriteContext,
  table: StoredTable,
  rows: readonly Row[],
): Promise<void> {
  const names = table.columns.map(({ column }) => `"${column}"`).join(', ');
  await db.$executeRawUnsafe(
    `insert into public."${table.name}" (network_id, created_by_id, ${names})
     select $1::uuid, $2::uuid, ${names} from jsonb_populate_recordset(null::public."${table.name}", $3::jsonb)`,
    actor.networkId,
    actor.personId,
    JSON.stringify(rows.map((row) => asStored(table, row))),
  );
}

/**
 * Fills the actor's network, which must have neither sites nor species yet, with the rows of an archive: same ids,
 * same values, in the order of the tables. Answers how many rows each table got; other columns are refused.
 */
export async function loadRows(
  context: WriteContext,
  opened: OpenedPackage,
): Promise<Result<Readonly<Record<string, number>>>> {
  const { db, actor } = context;
  if (actor.role !== 'coordinator' || (await db.site.count()) > 0 || (await db.species.count()) > 0)
    return notFound;
  const loaded: Record<string, number> = {};
  for (const name of packageTableNames) {
    const path = `data/${name}.csv`;
    const described = opened.descriptor.resources.find((one) => one.path === path);
    if (!described) continue;
    const table = await readColumns(context, name);
    const known = new Set(table.columns.map(({ column }) => column));
    const foreign = described.schema.fields.filter((field) => !known.has(field.name));
    if (foreign.length > 0)
      throw new Error(`${path} has columns of another version: ${foreign.map((one) => one.name).join(', ')}`);
    const present = {
      ...table,
      columns: table.columns.filter((one) =>
        described.schema.fields.some((field) => field.name === one.column),
      ),
    };
    // A row may name another one of its own table, which must then come with the same statement.
    const together = table.keys.some((key) => key.table === name);
    const kept: Row[] = [];
    let rows = 0;
    for await (const part of opened.rows(path)) {
      rows += part.length;
      if (together) kept.push(...part);
      else await insertRows(context, present, part);
    }
    if (kept.length > 0) await insertRows(context, present, kept);
    if (rows !== described.rows)
      throw new Error(`${path} has ${rows} rows and should have ${described.rows}`);
    loaded[name] = rows;
  }
  return ok(loaded);
}
