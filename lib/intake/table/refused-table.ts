import 'server-only';
import { stringify } from 'csv-stringify/sync';
import type { ReadContext } from '@/lib/access/context';
import { guardFormula } from '@/lib/base/formula-guard';
import type { RecordTableLayout } from '@/lib/growing/record-table-layout';
import type { RowProblem } from './taker';
import { storedProblems } from './view-file';

const signs = { comma: ',', semicolon: ';', tab: '\t' } as const;

/**
 * The rows that need a person as a table of its own: each cell with the text it came with, and one more that says
 * why; before what a spreadsheet would take for a formula stands an apostrophe, which is taken off when the file comes back. Written as the table was, so that the mended file is understood the same way.
 */
export async function refusedTable(
  { db }: ReadContext,
  id: string,
  layout: RecordTableLayout,
  words: { readonly reason: string; readonly say: (problems: readonly RowProblem[]) => string },
): Promise<string> {
  const rows = await db.intakeRow.findMany({
    where: { fileId: id, state: 'needs' },
    orderBy: { line: 'asc' },
    select: { cells: true, problems: true },
  });
  const width = Math.max(layout.headers.length, ...rows.map(({ cells }) => cells.length));
  const wide = (cells: readonly string[]) => Array.from({ length: width }, (_, index) => cells[index] ?? '');
  const lines = rows.map(({ cells, problems }) =>
    [...wide(cells), words.say(storedProblems(problems))].map(guardFormula),
  );
  const head = layout.headerLine === 0 ? [] : [[...wide(layout.headers), words.reason].map(guardFormula)];
  return `\ufeff${stringify([...head, ...lines], { delimiter: signs[layout.delimiter], record_delimiter: '\r\n' })}`;
}
