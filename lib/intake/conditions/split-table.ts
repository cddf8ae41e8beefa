import { parse } from 'csv-parse/sync';
import type { TableDelimiter } from '@/lib/growing/condition-table-layout';

const signs: Readonly<Record<TableDelimiter, string>> = { comma: ',', semicolon: ';', tab: '\t' };

/** Cells of each line, blanks around them taken off. Quotes may stand anywhere, lines may differ in length. */
export function splitTable(text: string, delimiter: TableDelimiter): readonly (readonly string[])[] {
  return parse(text, {
    delimiter: signs[delimiter],
    bom: true,
    trim: true,
    relax_quotes: true,
    relax_column_count: true,
    skip_empty_lines: false,
  });
}

/** The delimiter that cuts the most lines into the same number of cells, at least two. */
export function guessDelimiter(text: string): TableDelimiter {
  const sample = text.split(/\r?\n/, 60).join('\n');
  const score = (delimiter: TableDelimiter): number => {
    const widths = new Map<number, number>();
    for (const { length } of splitTable(sample, delimiter))
      if (length > 1) widths.set(length, (widths.get(length) ?? 0) + 1);
    return Math.max(0, ...widths.values());
  };
  // A comma may be the decimal sign of a table cut by semicolons or tabs, never the other way round.
  const order: readonly TableDelimiter[] = ['tab', 'semicolon', 'comma'];
  return order.reduce((best, next) => (score(next) > score(best) ? next : best));
}
