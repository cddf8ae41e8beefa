import 'server-only';
import PDFDocument from 'pdfkit';
import { collectPages } from '@/lib/labels/print/collect-pages';
import { openTypeface, regularFile } from '@/lib/labels/print/typeface';
import { inks, openPaper, type Paper, rule, sheet, writable } from './paper';
import { type SectionPrint, writeSection } from './write-section';
import { writeText } from './write-text';

export type ReportPrint = SectionPrint & {
  readonly paper: 'A4' | 'LETTER';
  /** "Page 2 of 5". */
  readonly pageOf: (page: number, pages: number) => string;
};

/** Title, standing and page number at the foot of every page; for a screen reader they are not there. */
function writeFeet(paper: Paper, { report, pageOf }: ReportPrint): void {
  const { document, typeface, left, width } = paper;
  const { start, count } = document.bufferedPageRange();
  const oneLine = { lineBreak: false } as const;
  for (let page = start; page < start + count; page += 1) {
    document.switchToPage(page);
    // Below the margin the library would begin a new page.
    document.page.margins.bottom = 0;
    document.y = document.page.height - sheet.margin - 8;
    rule(paper);
    const y = document.y + 6;
    document.markContent('Artifact', { type: 'Pagination' });
    typeface.use(false, sheet.small);
    document.fillColor(inks.quiet);
    const line = `${report.title} · ${report.standing}`;
    const place = { width: width * 0.8, height: 12, ellipsis: true, ...oneLine };
    document.text(writable(line, paper), left, y, place);
    document.text(writable(pageOf(page - start + 1, count), paper), left, y, {
      width,
      align: 'right',
      ...oneLine,
    });
    document.endMarkedContent();
  }
}

/** A report as a tagged PDF with bookmarks, embedded letters and text that can be selected. */
export async function reportPdf(print: ReportPrint): Promise<Uint8Array<ArrayBuffer>> {
  const { report } = print;
  const { margin, foot } = sheet;
  const document = new PDFDocument({
    autoFirstPage: true,
    bufferPages: true,
    size: print.paper,
    margins: { top: margin, left: margin, right: margin, bottom: margin + foot },
    font: regularFile(),
    pdfVersion: '1.7',
    tagged: true,
    lang: report.language,
    displayTitle: true,
    info: { Title: report.title, Subject: report.lead, Keywords: report.standing },
  });
  const whole = collectPages(document);
  const paper = openPaper(document, openTypeface(document));
  const structure = document.struct('Document');
  document.addStructure(structure);
  const quiet = { tag: 'P', sizePt: sheet.small, quiet: true } as const;
  writeText(paper, structure, report.title, { tag: 'H1', sizePt: 23, bold: true, below: 6 });
  writeText(paper, structure, report.lead, { tag: 'P', sizePt: 12, below: 3 });
  writeText(paper, structure, report.standing, { ...quiet, below: 8 });
  rule(paper, 0.9, inks.strong);
  for (const section of report.sections) writeSection(paper, structure, section, print);
  document.y += 10;
  for (const line of report.colophon) writeText(paper, structure, line, { ...quiet, below: 3 });
  structure.end();
  writeFeet(paper, print);
  document.end();
  return whole;
}
