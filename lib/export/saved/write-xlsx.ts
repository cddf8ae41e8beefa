import writeXlsx from 'write-excel-file/node';
import { ucumCodes } from '@/lib/growing/ucum-codes';
import type { Cell, ColumnHead } from './saved-table';
import { writtenCell } from './write-cell';
import type { WrittenWords } from './written-words';

/** A workbook is made in memory; longer tables are for CSV. */
export const mostXlsxRows = 50_000;

const bold = (value: string) => ({ value, type: String, fontWeight: 'bold' as const });
const text = (value: string) => ({ value, type: String });

function sheetCell(cell: Cell, column: ColumnHead, words: WrittenWords) {
  const written = writtenCell(cell, column, words);
  if (written === null) return null;
  if (typeof written === 'number') return { value: written, type: Number };
  if (column.kind === 'date')
    return { value: new Date(`${written}T00:00:00.000Z`), type: Date, format: 'yyyy-mm-dd' };
  return text(written);
}

/**
 * Writes rows as a workbook: the rows, and a sheet that says of each column what it is, its UCUM unit and what a
 * blank means. Text stays text, whatever it begins with. Undefined when there are more rows than `mostXlsxRows`.
 */
export async function writeWorkbook(
  file: string,
  columns: readonly ColumnHead[],
  pages: AsyncIterable<readonly Cell[][]>,
  words: WrittenWords,
): Promise<number | undefined> {
  const data = [columns.map((column) => bold(words.heading(column)))] as ReturnType<typeof sheetCell>[][];
  for await (const page of pages) {
    if (data.length - 1 + page.length > mostXlsxRows) return undefined;
    for (const row of page)
      data.push(columns.map((column, index) => sheetCell(row[index] ?? null, column, words)));
  }
  const { column, about, unit, blank } = words.columnsTable;
  const key = [
    [bold(column), bold(about), bold(unit), bold(blank)],
    ...columns.map((one) => [
      text(words.heading(one)),
      text(words.about(one)),
      one.unit === undefined ? null : text(ucumCodes[one.unit]),
      text(words.blank(one)),
    ]),
  ];
  await writeXlsx([
    { data, sheet: words.sheets.rows, columns: columns.map(() => ({ width: 16 })), stickyRowsCount: 1 },
    {
      data: key,
      sheet: words.sheets.columns,
      columns: [{ width: 26 }, { width: 60 }, { width: 10 }, { width: 40 }],
    },
  ]).toFile(file);
  return data.length - 1;
}
