import { CsvError, parse } from 'csv-parse/sync';
import type { TableDelimiter } from '@/lib/growing/condition-table-layout';

const signs: Readonly<Record<TableDelimiter, string>> = { comma: ',', semicolon: ';', tab: '\t' };

const longestRecord = 1_000_000;

/**
 * Cells of each line as they stand there, blanks kept. Quotes that do not close and lines of any width are taken as they
 * are, the first `most` of them: a broken line is told by its row, not by refusing the file. Undefined where one line alone is too long.
 */
export function splitRows(text: string, delimiter: TableDelimiter, most: number): string[][] | undefined {
  const options = {
    delimiter: signs[delimiter],
    bom: true,
    relax_column_count: true,
    skip_empty_lines: false,
    to: most,
    max_record_size: longestRecord,
  };
  try {
    return parse(text, { ...options, relax_quotes: true });
  } catch {
    // Without quotes nothing but the length of a line can be wrong.
    try {
      return parse(text, { ...options, quote: false });
    } catch (error) {
      if (error instanceof CsvError && error.code === 'CSV_MAX_RECORD_SIZE') return undefined;
      throw error;
    }
  }
}

/** The delimiter that cuts the most lines into the same number of cells, at least two. */
export function guessRowDelimiter(text: string): TableDelimiter {
  const sample = text.slice(0, 100_000).split(/\r?\n/, 60).join('\n');
  const score = (delimiter: TableDelimiter): number => {
    const widths = new Map<number, number>();
    for (const { length } of splitRows(sample, delimiter, 60) ?? [])
      if (length > 1) widths.set(length, (widths.get(length) ?? 0) + 1);
    return Math.max(0, ...widths.values());
  };
  // A comma may be the decimal sign of a table cut by semicolons or tabs, never the other way round.
  const order: readonly TableDelimiter[] = ['tab', 'semicolon', 'comma'];
  return order.reduce((best, next) => (score(next) > score(best) ? next : best));
}
