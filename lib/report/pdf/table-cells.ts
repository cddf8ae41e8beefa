import 'server-only';
import type { DocumentRow, DocumentTable } from '../document/report-document';
import { type ColumnNeed, columnWidths } from './column-widths';
import { inks, type Paper, sheet, writable } from './paper';

export const gutter = 12;

/** One line of a cell in one letter. */
export type CellLine = {
  readonly text: string;
  readonly bold: boolean;
  readonly quiet: boolean;
  readonly sizePt: number;
};

export type Grid = {
  readonly widths: readonly number[];
  readonly numeric: readonly boolean[];
};

export const headLines = (text: string): CellLine[] => [
  { text, bold: true, quiet: true, sizePt: sheet.small },
];

/** The lines of one cell: what it says, and the quieter line below. */
export function linesOf(row: DocumentRow, at: number): CellLine[] {
  const cell = row.cells[at];
  if (!cell) return [];
  const own = { text: cell.text, bold: row.total ?? false, quiet: false, sizePt: sheet.table };
  const below = cell.below ?? '';
  return below === '' ? [own] : [own, { text: below, bold: false, quiet: true, sizePt: sheet.small }];
}

const inner = (grid: Grid, at: number) =>
  (grid.widths[at] ?? 0) - (at === grid.widths.length - 1 ? 0 : gutter);

/** Widths of the columns from the letters of their cells. */
export function gridOf(paper: Paper, table: DocumentTable): Grid {
  const widest = (texts: readonly CellLine[], split: boolean) =>
    Math.max(
      0,
      ...texts.flatMap(({ text, bold, sizePt }) => {
        paper.typeface.use(bold, sizePt);
        // Spaces that do not break keep their words together.
        const parts = split ? text.split(/[ \n]/) : [text];
        return parts.map((part) => paper.document.widthOfString(writable(part, paper)));
      }),
    );
  const needs = table.columns.map((column, at): ColumnNeed => {
    const lines = [...table.rows.flatMap((row) => linesOf(row, at)), ...headLines(column.header)];
    const room = (at === table.columns.length - 1 ? 0 : gutter) + 0.5;
    // Of a number, the quieter line and the head may wrap; what it says may not.
    const said = lines.filter(({ quiet }) => !quiet);
    const least = column.numeric
      ? Math.max(Math.min(widest(said, false), 150), widest(lines, true))
      : widest(lines, true);
    return { least: least + room, most: Math.max(least, widest(lines, false)) + room };
  });
  return { widths: columnWidths(needs, paper.width), numeric: table.columns.map(({ numeric }) => numeric) };
}

export function rowHeight(paper: Paper, grid: Grid, cells: readonly (readonly CellLine[])[]): number {
  const heights = cells.map((lines, at) =>
    lines.reduce((sum, line) => {
      paper.typeface.use(line.bold, line.sizePt);
      return sum + paper.document.heightOfString(writable(line.text, paper), { width: inner(grid, at) });
    }, 0),
  );
  return Math.max(0, ...heights);
}

/** Writes the lines of one cell with its upper left corner at `x`, `top`. */
export function drawCell(
  paper: Paper,
  grid: Grid,
  at: number,
  lines: readonly CellLine[],
  { x, top }: { readonly x: number; readonly top: number },
): void {
  const { document, typeface } = paper;
  let y = top;
  for (const line of lines) {
    typeface.use(line.bold, line.sizePt);
    document.fillColor(line.quiet ? inks.quiet : inks.text);
    document.text(writable(line.text, paper), x, y, {
      width: inner(grid, at),
      align: grid.numeric[at] ? 'right' : 'left',
    });
    y = document.y;
  }
}
