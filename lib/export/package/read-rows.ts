import type { ReadContext } from '@/lib/access/context';
import type { StoredColumn, StoredTable } from './read-columns';

const rowsPerQuery = 5000;
const name = (column: string) => `"${column}"`;

function asText({ column, type }: StoredColumn): string {
  if (type === 'datetime')
    return `to_char(${name(column)} at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"')`;
  if (type === 'array') return `to_jsonb(${name(column)})::text`;
  return `${name(column)}::text`;
}

/**
 * All rows of a table, or those of one site and what belongs to no site, in the order of their ids, a part at a time, each value as text and null for a blank. The names
 * come from the catalogue of the database, never from a request.
 */
export async function* readRows(
  { db, actor }: ReadContext,
  table: StoredTable,
  siteId?: string,
): AsyncGenerator<readonly (string | null)[][]> {
  const id = table.columns.findIndex(({ column }) => column === 'id');
  const cells = table.columns.map(asText).join(', ');
  const site =
    table.name === 'site' ? 'id' : table.columns.find(({ column }) => column === 'site_id')?.column;
  const ofSite = siteId === undefined || site === undefined ? '' : `and ${name(site)} = $3::uuid`;
  const values = ofSite === '' ? [] : [siteId];
  const sql = `select coalesce(json_agg(json_build_array(${cells}) order by id), '[]')::text as part from (
    select * from public.${name(table.name)} where network_id = $1::uuid and id > $2::uuid ${ofSite} order by id limit ${rowsPerQuery}) t`;
  let after = '00000000-0000-0000-0000-000000000000';
  for (;;) {
    const [found] = await db.$queryRawUnsafe<{ part: string }[]>(sql, actor.networkId, after, ...values);
    const rows = JSON.parse(found?.part ?? '[]') as (string | null)[][];
    if (rows.length > 0) yield rows;
    const last = rows.at(-1)?.[id];
    if (rows.length < rowsPerQuery || !last) return;
    after = last;
  }
}
