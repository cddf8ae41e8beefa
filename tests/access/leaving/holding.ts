import type { Client } from 'pg';

/** Tables in any of whose text, JSON or bytes the words stand, of the whole database. */
export async function holding(admin: Client, ...words: string[]): Promise<string[]> {
  const { rows } = await admin.query<{ table: string; columns: string }>(
    `select c.relname as table, string_agg(case when y.typname = 'bytea' then format('coalesce(encode(%I, ''escape''), '''')', a.attname)
       else format('coalesce(%I::text, '''')', a.attname) end, ' || '' '' || ') as columns
     from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped
     join pg_type y on y.oid = a.atttypid
     where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and y.typname in ('text', 'varchar', 'json', 'jsonb', '_text', 'bytea')
     group by c.relname`,
  );
  const found: string[] = [];
  for (const { table, columns } of rows) {
    const { rows: counted } = await admin.query<{ n: number }>(
      `select count(*)::int as n from public."${table}" where lower(${columns}) like any ($1)`,
      [words.map((word) => `%${word.toLowerCase()}%`)],
    );
    if ((counted[0]?.n ?? 0) > 0) found.push(table);
  }
  return found.sort();
}
