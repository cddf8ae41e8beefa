import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { joinSql, sql } from '@/lib/database/sql-text';
import { cellText } from './read-row';
import type { OpenFile } from './rows-to-take';

/** What the rows of a table say in the columns of some fields, each combination once; none where a field has no column. */
export async function textsOfRows(
  { db, actor }: ReadContext,
  file: OpenFile,
  fields: readonly string[],
): Promise<readonly (readonly string[])[]> {
  const indexes = fields.map((name) => file.layout.columns.findIndex(({ field }) => field === name));
  if (indexes.some((index) => index < 0)) return [];
  const cells = indexes.map(
    (index) => sql`coalesce(mended ->> ${String(index)}::text, cells[${index + 1}::int], '')`,
  );
  const rows = await db.$queryRaw<{ texts: string[] }[]>`
    select distinct array[${joinSql(cells)}] as texts from public.intake_row
    where network_id = ${actor.networkId}::uuid and file_id = ${file.id}::uuid and state <> 'left_out'`;
  return rows.map(({ texts }) => texts.map(cellText));
}
