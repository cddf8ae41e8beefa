import 'server-only';
import { inks, type Paper, rule } from './paper';
import { type CellLine, drawCell, type Grid, rowHeight } from './table-cells';

export const rowGap = 3.5;

type CellRole = { readonly tag: 'TH' | 'TD'; readonly scope?: 'Row' | 'Column' };

export type RowToDraw = {
  readonly cells: readonly (readonly CellLine[])[];
  /** What each cell is to a screen reader; undefined for a head that only stands there again. */
  readonly role: ((at: number) => CellRole) | undefined;
  readonly parent: PDFKit.PDFStructureElement;
  readonly strong?: boolean;
};

/** Draws a row of cells at the cursor with a line below. */
export function drawRow(paper: Paper, grid: Grid, { cells, role, parent, strong }: RowToDraw): void {
  const { document, left } = paper;
  const height = rowHeight(paper, grid, cells);
  const top = document.y + rowGap;
  const row = role === undefined ? undefined : document.struct('TR');
  if (row) parent.add(row);
  let x = left;
  for (const [at, lines] of cells.entries()) {
    const place = { x, top };
    if (row && role) {
      const { tag, scope } = role(at);
      row.add(
        document.struct(tag, scope === undefined ? {} : { scope }, () =>
          drawCell(paper, grid, at, lines, place),
        ),
      );
    } else {
      document.markContent('Artifact', { type: 'Pagination' });
      drawCell(paper, grid, at, lines, place);
      document.endMarkedContent();
    }
    x += grid.widths[at] ?? 0;
  }
  row?.end();
  document.y = top + height + rowGap;
  rule(paper, strong ? 0.9 : 0.5, strong ? inks.strong : inks.rule);
}
