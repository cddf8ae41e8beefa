import 'server-only';
import type { DocumentTable } from '../document/report-document';
import { type Paper, sheet } from './paper';
import { type CellLine, type Grid, gridOf, headLines, linesOf, rowHeight } from './table-cells';
import { drawRow, type RowToDraw, rowGap } from './table-row';
import { writeText } from './write-text';

type Line = {
  readonly cells: readonly (readonly CellLine[])[];
  readonly height: number;
  readonly group: string | undefined;
  /** The first row of its group. */
  readonly opens: boolean;
};

/** Height of the heading of a group and of the gap around it. */
const groupHeight = 24;

/** Rows that stay together: the first two with the head, the last two with each other. */
function heightFrom(lines: readonly Line[], at: number): number {
  const own = lines[at];
  if (!own) return 0;
  const next = at === 0 || at === lines.length - 2 ? (lines[at + 1]?.height ?? 0) : 0;
  return own.height + next;
}

function drawGroup(
  paper: Paper,
  parent: PDFKit.PDFStructureElement,
  name: string | undefined,
  role: RowToDraw['role'],
): void {
  if (name === undefined) return;
  const cells = [[{ text: name, bold: true, quiet: false, sizePt: sheet.table }]];
  drawRow(paper, { widths: [paper.width], numeric: [false] }, { cells, parent, role });
}

type Measured = {
  readonly grid: Grid;
  readonly head: readonly (readonly CellLine[])[];
  readonly lines: readonly Line[];
  /** Height below the caption that is not broken. */
  readonly kept: number;
};

function measured(paper: Paper, table: DocumentTable): Measured {
  const grid = gridOf(paper, table);
  const head = table.columns.map(({ header }) => headLines(header));
  const headHeight = rowHeight(paper, grid, head) + 2 * rowGap;
  const lines = table.rows.map((row, index): Line => {
    const cells = table.columns.map((_, at) => linesOf(row, at));
    const opens = row.group !== undefined && row.group !== table.rows[index - 1]?.group;
    const height = rowHeight(paper, grid, cells) + 2 * rowGap + (opens ? groupHeight : 0);
    return { cells, height, group: row.group, opens };
  });
  const whole = headHeight + lines.reduce((sum, { height }) => sum + height, 0);
  const kept = whole <= paper.wholePage() * 0.25 ? whole : headHeight + heightFrom(lines, 0);
  return { grid, head, lines, kept };
}

const caption = { tag: 'Caption', sizePt: sheet.body, bold: true, above: 8 } as const;

/** Space that the beginning of a table takes: its caption, its head and the rows that stay with it. */
export function tableBegins(paper: Paper, table: DocumentTable): number {
  const { kept } = measured(paper, table);
  const { document, typeface, width } = paper;
  typeface.use(true, caption.sizePt);
  return kept + caption.above + document.heightOfString(table.caption, { width, lineGap: sheet.lineGap });
}

/** Writes a table with its caption. A short one is not broken; a long one shows its head again on each further page. */
export function writeTable(paper: Paper, parent: PDFKit.PDFStructureElement, table: DocumentTable): void {
  const { document } = paper;
  const { grid, head, lines, kept } = measured(paper, table);
  const structure = document.struct('Table');
  parent.add(structure);
  writeText(paper, structure, table.caption, { ...caption, keepWith: kept });
  drawRow(paper, grid, {
    cells: head,
    parent: structure,
    role: () => ({ tag: 'TH', scope: 'Column' }),
    strong: true,
  });
  for (const [at, line] of lines.entries()) {
    if (document.y + heightFrom(lines, at) > paper.bottom()) {
      document.addPage();
      drawRow(paper, grid, { cells: head, parent: structure, role: undefined, strong: true });
      // Whoever turns the page still sees of which group a row is.
      if (!line.opens) drawGroup(paper, structure, line.group, undefined);
    }
    if (line.opens) drawGroup(paper, structure, line.group, () => ({ tag: 'TH', scope: 'Row' }));
    drawRow(paper, grid, {
      cells: line.cells,
      parent: structure,
      role: (index) => (index === 0 ? { tag: 'TH', scope: 'Row' } : { tag: 'TD' }),
    });
  }
  structure.end();
  document.y += 8;
}
