import 'server-only';
import type { DocumentTable } from '../document/report-document';
import { type FigureNotes, figureNotes } from './figure-notes';
import { type Paper, sheet } from './paper';
import { writeText } from './write-text';

const sentence = (lines: readonly string[]) =>
  lines.map((line) => (/[.!?]$/.test(line) ? line : `${line}.`)).join(' ');

/** Below a table: how each figure in it was worked out. */
export function writeFigureNotes(
  paper: Paper,
  parent: PDFKit.PDFStructureElement,
  table: DocumentTable,
  heading: string,
): void {
  const { common, own } = figureNotes(table);
  if (common.length + own.length === 0) return;
  const quiet = { tag: 'P', sizePt: sheet.small, quiet: true, below: 2 } as const;
  writeText(paper, parent, heading, {
    tag: 'H3',
    sizePt: sheet.body,
    bold: true,
    above: 6,
    below: 2,
    keepWith: 30,
  });
  const said = (columns: FigureNotes['common']) =>
    columns.map(({ column, lines }) => `${column}: ${sentence(lines)}`).join(' ');
  for (const column of common) writeText(paper, parent, said([column]), quiet);
  for (const { row, columns } of own) writeText(paper, parent, `${row}. ${said(columns)}`, quiet);
  paper.document.y += 6;
}
