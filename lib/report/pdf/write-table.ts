import 'server-only';
import type { DocumentTable } from '../document/report-document';
import { type Paper, sheet } from './paper';
import { type CellLine, gridOf, headLines, linesOf, rowHeight } from './table-cells';
import { drawRow, rowGap } from './table-row';
import { writeText } from './write-text';

type Line = {
  readonly cells: readonly (readonly CellLine[])[];
  readonly height: number;
  readonly group?: string;
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

/** Writes a table with its caption. A short one is not broken; a long one shows its head again on each further page. */
export function writeTable(paper: Paper, parent: PDFKit.PDFStructureElement, table: DocumentTable): void {
  const { document } = paper;
  const grid = gridOf(paper, table);
  const head = table.columns.map(({ header }) => headLines(header));
  const headHeight = rowHeight(paper, grid, head) + 2 * rowGap;
  const lines = table.rows.map((row, index): Line => {
    const cells = table.columns.map((_, at) => linesOf(row, at));
    const opens = row.group !== undefined && row.group !== table.rows[index - 1]?.group;
    const height = rowHeight(paper, grid, cells) + 2 * rowGap + (opens ? groupHeight : 0);
    return { cells, height, ...(opens && row.group !== undefined ? { group: row.group } : {}) };
  });
  const whole = headHeight + lines.reduce((sum, { height }) => sum + height, 0);
  const kept = whole <= paper.wholePage() * 0.45 ? whole : headHeight + heightFrom(lines, 0);
  const structure = document.struct('Table');
  parent.add(structure);
  writeText(paper, structure, table.caption, {
    tag: 'Caption',
    sizePt: sheet.body,
    bold: true,
    above: 8,
    keepWith: kept,
  });
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
    }
    if (line.group !== undefined)
      drawRow(
        paper,
        { widths: [paper.width], numeric: [false] },
        {
          cells: [[{ text: line.group, bold: true, quiet: false, sizePt: sheet.table }]],
          parent: structure,
          role: () => ({ tag: 'TH', scope: 'Row' }),
        },
      );
    drawRow(paper, grid, {
      cells: line.cells,
      parent: structure,
      role: (index) => (index === 0 ? { tag: 'TH', scope: 'Row' } : { tag: 'TD' }),
    });
  }
  structure.end();
  document.y += 8;
}
