import { parse } from 'csv-parse/sync';
import type { TableDelimiter } from '@/lib/growing/condition-table-layout';

const signs: Readonly<Record<TableDelimiter, string>> = { comma: ',', semicolon: ';', tab: '\t' };

/**
 * Cells of each line as they stand there, blanks kept. Quotes that do not close and lines of any length are taken as they
 * are: a broken line is told by its row, not by refusing the file.
 */
export function splitRows(text: string, delimiter: TableDelimiter): string[][] {
  const options = {
    delimiter: signs[delimiter],
    bom: true,
    relax_column_count: true,
    skip_empty_lines: false,
  };
  try {
    return parse(text, { ...options, relax_quotes: true });
  } catch {
    return parse(text, { ...options, quote: false });
  }
}

/** The delimiter that cuts the most lines into the same number of cells, at least two. */
export function guessRowDelimiter(text: string): TableDelimiter {
  const sample = text.split(/\r?\n/, 60).join('\n');
  const score = (delimiter: TableDelimiter): number => {
    const widths = new Map<number, number>();
    for (const { length } of splitRows(sample, delimiter))
      if (length > 1) widths.set(length, (widths.get(length) ?? 0) + 1);
    return Math.max(0, ...widths.values());
  };
  // A comma may be the decimal sign of a table cut by semicolons or tabs, never the other way round.
  const order: readonly TableDelimiter[] = ['tab', 'semicolon', 'comma'];
  return order.reduce((best, next) => (score(next) > score(best) ? next : best));
}
