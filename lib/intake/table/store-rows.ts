import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import type { RecordTableLayout } from '@/lib/growing/record-table-layout';

const atOnce = 2_000;

/** Keeps the text of the rows below the line of names, blank ones and sums left out; rows kept before are replaced. */
export async function storeRows(
  { db, actor }: WriteContext,
  fileId: string,
  rows: readonly (readonly string[])[],
  { headerLine, totals }: Pick<RecordTableLayout, 'headerLine' | 'totals'>,
): Promise<number> {
  await db.$executeRaw`update public.intake_row set state = 'left_out', problems = '[]'
    where network_id = ${actor.networkId}::uuid and file_id = ${fileId}::uuid and state <> 'added'`;
  const sums = new Set(totals);
  let kept = 0;
  for (let from = headerLine; from < rows.length; from += atOnce) {
    const some = rows
      .slice(from, from + atOnce)
      .map((cells, index) => [from + index + 1, cells] as const)
      .filter(([line, cells]) => !sums.has(line) && cells.some((cell) => cell.trim() !== ''));
    kept += some.length;
    const part = JSON.stringify(some);
    await db.$executeRaw`
      insert into public.intake_row as kept (network_id, file_id, line, cells)
      select ${actor.networkId}::uuid, ${fileId}::uuid, (r ->> 0)::int, array(select jsonb_array_elements_text(r -> 1))
      from jsonb_array_elements(${part}::jsonb) r
      on conflict (network_id, file_id, line) do update
        set cells = excluded.cells, mended = null, state = 'unread', problems = '[]' where kept.state <> 'added'`;
  }
  return kept;
}
