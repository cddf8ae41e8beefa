import 'server-only';
import writeXlsx, { type SheetData } from 'write-excel-file/node';
import { paragraphsOf } from '@/lib/base/paragraphs-of';
import type { DocumentSection, ReportDocument } from '../document/report-document';
import { boldCell, numberCell, type SheetCell, textCell } from './sheet-cells';
import { tableRows, type WorkbookWords } from './table-rows';

export type { WorkbookWords };

type Rows = (SheetCell | null)[][];

const withUnit = /[\p{L}\p{Sc}%]/u;

/** Names of sheets: at most 31 letters, none of those a workbook forbids, each once. */
function sheetName(heading: string, at: number): string {
  return `${at + 1} ${heading.replaceAll(/[\\/?*[\]:']/g, ' ')}`.slice(0, 31).trim();
}

function sectionRows(section: DocumentSection, wordsLabel: string, words: WorkbookWords): Rows {
  const said = section.words === undefined ? [] : paragraphsOf(section.words);
  return [
    [boldCell(section.heading)],
    ...(said.length === 0 ? [] : [[boldCell(wordsLabel)], ...said.map((line) => [textCell(line)]), []]),
    ...section.paragraphs.map((line) => [textCell(line)]),
    ...(section.facts ?? []).map(({ label, text, value }) => [
      textCell(label),
      numberCell(value) ?? textCell(text),
      // A mass or an amount beside its number as it is read: with its unit.
      value !== undefined && withUnit.test(text) ? textCell(text) : null,
    ]),
    ...(section.tables ?? []).flatMap((table) => [[], ...tableRows(table, words)]),
    ...(section.stories ?? []).flatMap(({ title, words: told, withdrawal }) => [
      [boldCell(title)],
      ...[withdrawal ?? '', told].filter((line) => line !== '').map((line) => [textCell(line)]),
    ]),
    ...(section.notes ?? []).map((line) => [textCell(line)]),
  ];
}

/** A report as a workbook: the report's own lines first, then one sheet a section. */
export async function reportWorkbook(
  report: ReportDocument,
  words: WorkbookWords,
): Promise<Uint8Array<ArrayBuffer>> {
  const first: Rows = [
    [boldCell(report.title)],
    ...[report.lead, report.standing, ...report.colophon].map((line) => [textCell(line)]),
  ];
  const sheets = report.sections.map((section, at) => ({
    sheet: sheetName(section.heading, at + 1),
    columns: [{ width: 52 }, ...Array.from({ length: 12 }, () => ({ width: 24 }))],
    data: sectionRows(section, report.wordsLabel, words) as SheetData,
  }));
  const buffer = await writeXlsx([
    { data: first as SheetData, sheet: sheetName(report.title, 0), columns: [{ width: 90 }] },
    ...sheets,
  ]).toBuffer();
  return new Uint8Array(buffer);
}
