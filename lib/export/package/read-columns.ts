import { z } from 'zod';
import type { ReadContext } from '@/lib/access/context';
import { columnsLeftOut } from './package-tables';

const fieldType = z.enum(['string', 'integer', 'number', 'boolean', 'date', 'datetime', 'object', 'array']);

const columnRow = z.object({
  column: z.string(),
  type: fieldType,
  required: z.boolean(),
  categories: z.array(z.string()).nullable(),
});

const keyRow = z.object({ fields: z.array(z.string()), table: z.string(), references: z.array(z.string()) });

/** A column as the database has it. */
export type StoredColumn = z.output<typeof columnRow>;

/** A foreign key within the network. */
export type StoredKey = z.output<typeof keyRow>;

export type StoredTable = {
  readonly name: string;
  readonly columns: readonly StoredColumn[];
  readonly keys: readonly StoredKey[];
};

/** The columns and foreign keys of a table, read from the database's own catalogue, without network and people. */
export async function readColumns({ db }: Pick<ReadContext, 'db'>, name: string): Promise<StoredTable> {
  const columns = await db.$queryRaw<unknown[]>`
    select a.attname::text as column, a.attnotnull as required,
      case when t.typcategory = 'A' then 'array' when t.typcategory = 'B' then 'boolean' when t.typname in ('int2', 'int4', 'int8') then 'integer'
        when t.typcategory = 'N' then 'number' when t.typname = 'date' then 'date' when t.typname = 'timestamptz' then 'datetime'
        when t.typname = 'jsonb' then 'object' else 'string' end as type,
      (select array_agg(e.enumlabel::text order by e.enumsortorder) from pg_enum e where e.enumtypid = t.oid) as categories
    from pg_attribute a join pg_type t on t.oid = a.atttypid
    where a.attrelid = to_regclass(${`public."${name}"`}) and a.attnum > 0 and not a.attisdropped
      and a.attname <> all (${[...columnsLeftOut]}::text[])
    order by a.attnum`;
  const keys = await db.$queryRaw<unknown[]>`
    select f.relname::text as table,
      array(select a.attname::text from unnest(c.conkey) with ordinality k(n, i) join pg_attribute a
        on a.attrelid = c.conrelid and a.attnum = k.n where a.attname <> 'network_id' order by k.i) as fields,
      array(select a.attname::text from unnest(c.confkey) with ordinality k(n, i) join pg_attribute a
        on a.attrelid = c.confrelid and a.attnum = k.n where a.attname <> 'network_id' order by k.i) as references
    from pg_constraint c join pg_class f on f.oid = c.confrelid
    where c.contype = 'f' and c.conrelid = to_regclass(${`public."${name}"`}) and f.relname not in ('network', 'person')
    order by c.conname`;
  return { name, columns: z.array(columnRow).parse(columns), keys: z.array(keyRow).parse(keys) };
}
