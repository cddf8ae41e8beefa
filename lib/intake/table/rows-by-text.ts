import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { OpenFile } from './rows-to-take';

/** How many rows of a table hold each text in the column of a field, as it is written; empty without such a column. */
export async function rowsByText(
  { db, actor }: ReadContext,
  file: OpenFile,
  field: string,
): Promise<ReadonlyMap<string, number>> {
  const counts = new Map<string, number>();
  const index = file.layout.columns.findIndex((column) => column.field === field);
  if (index < 0) return counts;
  const rows = await db.$queryRaw<{ text: string | null; rows: number }[]>`
    select coalesce(mended ->> ${String(index)}::text, cells[${index + 1}::int]) as text, count(*)::int as rows
    from public.intake_row
    where network_id = ${actor.networkId}::uuid and file_id = ${file.id}::uuid and state <> 'left_out' group by 1`;
  for (const { text, rows: count } of rows) counts.set(text ?? '', count);
  return counts;
}
