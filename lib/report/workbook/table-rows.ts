import type { DocumentTable } from '../document/report-document';
import { boldCell, numberCell, type SheetCell, textCell } from './sheet-cells';

export type WorkbookWords = {
  /** Heads the column that holds a figure as a number. */
  readonly asNumber: (header: string, unit: string | undefined) => string;
  /** Heads the column that holds an end of its interval. */
  readonly limit: (header: string, end: 'low' | 'high') => string;
  /** Heads the column that says how the figures of a row were worked out. */
  readonly how: string;
};

const joined = (parts: readonly (string | undefined)[], by: string) =>
  parts.filter((part) => part !== undefined && part !== '').join(by);

/** A table as rows of a sheet: each figure as it is read and, beside that, as a number in its unit. */
export function tableRows(table: DocumentTable, words: WorkbookWords): (SheetCell | null)[][] {
  const columns = table.columns.map((column, at) => ({
    ...column,
    at,
    asNumber: table.rows.some((row) => row.cells[at]?.value !== undefined),
    limits: table.rows.some((row) => row.cells[at]?.interval !== undefined),
  }));
  const explained = table.rows.some((row) => row.cells.some((cell) => cell.history !== undefined));
  const ends = ['low', 'high'] as const;
  const head = columns.flatMap(({ header, unit, asNumber, limits }) => [
    boldCell(header),
    ...(asNumber ? [boldCell(words.asNumber(header, unit))] : []),
    ...(limits ? ends.map((end) => boldCell(words.limit(header, end))) : []),
  ]);
  const rows = table.rows.map((row) => {
    const figures = columns.flatMap(({ at, asNumber, limits }) => {
      const cell = row.cells[at];
      const said = joined([cell?.text, cell?.below], '; ');
      return [
        textCell(at === 0 ? joined([row.group, said], ': ') : said),
        ...(asNumber ? [numberCell(cell?.value)] : []),
        ...(limits ? ends.map((end) => numberCell(cell?.interval?.[end])) : []),
      ];
    });
    const how = columns.map(({ at, header }) => {
      const history = row.cells[at]?.history;
      return history === undefined ? undefined : `${header}: ${history.join('; ')}`;
    });
    return [...figures, ...(explained ? [textCell(joined(how, '\n'))] : [])];
  });
  return [[boldCell(table.caption)], [...head, ...(explained ? [boldCell(words.how)] : [])], ...rows];
}
