import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { takerOfKind } from './kinds/taker-of-kind';
import { recordsOfOtherRows } from './records-of-other-rows';
import { rowsByText } from './rows-by-text';
import { lookUpReferences, type OpenFile, rowsToTake } from './rows-to-take';
import type { TakenRow } from './taker';
import { textsOfRows } from './texts-of-rows';

/** A row with what became of it. */
export type RowOutcome = { readonly line: number; readonly taken: TakenRow };

type Steps = {
  /** States of the rows to take. */
  readonly states: readonly string[];
  readonly rehearsal: boolean;
  /** Called with each chunk before the next is begun; throws to stop. */
  readonly after: (outcomes: readonly RowOutcome[]) => Promise<void>;
};

/** The tag of a region that writes numbers with the table's decimal sign. */
const regionOf = { point: 'en-US', comma: 'es-ES' } as const;

/** Takes the rows of a table in order, a chunk at a time, all in the transaction it is given. */
export async function runRows(
  context: WriteContext,
  file: OpenFile,
  { states, rehearsal, after }: Steps,
): Promise<void> {
  const known = await lookUpReferences(context, file);
  const taker = takerOfKind[file.kind]({
    siteId: file.siteId,
    region: regionOf[file.layout.decimal],
    rehearsal,
    usedUp: await recordsOfOtherRows(context, file, states),
    rowsByText: (field) => rowsByText(context, file, field),
    textsOf: (fields) => textsOfRows(context, file, fields),
    unitOf: (field) => file.layout.columns.find((column) => column.field === field)?.unit ?? null,
  });
  let last = 0;
  for (;;) {
    const stored = await context.db.$queryRaw<
      { line: number; cells: string[]; mended: unknown; confirmed: string[] }[]
    >`select line, cells, mended, confirmed from public.intake_row
      where network_id = ${context.actor.networkId}::uuid and file_id = ${file.id}::uuid and line > ${last}
        and state::text = any(${states}::text[])
      order by line limit ${taker.atOnce}`;
    if (stored.length === 0) return;
    last = stored.at(-1)?.line ?? last;
    const rows = rowsToTake(file, known, stored);
    const taken = await taker.take(context, rows);
    // Cheap where nothing is wrong; see the migration.
    await context.db.$queryRaw`select app.mend_counts()::text`;
    await after(rows.flatMap(({ line }, at) => (taken[at] ? [{ line, taken: taken[at] }] : [])));
  }
}
