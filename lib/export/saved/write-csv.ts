import { createWriteStream } from 'node:fs';
import { pipeline } from 'node:stream/promises';
import { stringify } from 'csv-stringify';
import { guardFormula } from '@/lib/base/formula-guard';
import type { Cell, ColumnHead } from './saved-table';
import { writtenCell } from './write-cell';
import type { WrittenWords } from './written-words';

/**
 * Writes rows as CSV (RFC 4180, UTF-8 with a mark for spreadsheets) and answers how many there were. Text cannot
 * become a formula; numbers are written with a decimal point and unrounded.
 */
export async function writeCsv(
  file: string,
  columns: readonly ColumnHead[],
  pages: AsyncIterable<readonly Cell[][]>,
  words: WrittenWords,
): Promise<number> {
  let rows = 0;
  async function* lines() {
    yield columns.map((column) => guardFormula(words.heading(column)));
    for await (const page of pages)
      for (const row of page) {
        rows += 1;
        yield columns.map((column, index) => {
          const cell = writtenCell(row[index] ?? null, column, words);
          return typeof cell === 'string' ? guardFormula(cell) : cell;
        });
      }
  }
  const csv = stringify({ bom: true, record_delimiter: 'windows' });
  await pipeline(lines, csv, createWriteStream(file));
  return rows;
}
