import 'server-only';
import type { DocumentSection, ReportDocument } from '../document/report-document';
import { type Paper, sheet } from './paper';
import { writeFacts } from './write-facts';
import { writeFigureNotes } from './write-figure-notes';
import { storyBegins, writeStory } from './write-story';
import { tableBegins, writeTable } from './write-table';
import { writeText } from './write-text';
import { writeWords } from './write-words';

export type SectionPrint = {
  readonly report: ReportDocument;
  /** JPEG by story id. */
  readonly pictures: ReadonlyMap<string, Uint8Array>;
  /** Heads the lines that say how figures were worked out. */
  readonly howHeading: string;
};

/** Of its text, as much as may stand between a heading and its table for all three to keep together. */
const shortText = 0.2;

/** Space that the beginning of a part takes: where little text stands before its table, the beginning of that as well. */
function sectionBegins(paper: Paper, { words, paragraphs, facts, tables }: DocumentSection): number {
  const [table] = tables ?? [];
  const { document, typeface, width } = paper;
  typeface.use(false, sheet.body);
  const text = paragraphs.reduce(
    (sum, paragraph) => sum + document.heightOfString(paragraph, { width, lineGap: sheet.lineGap }) + 5,
    0,
  );
  const short = words === undefined && facts === undefined && text <= paper.wholePage() * shortText;
  return table && short ? text + tableBegins(paper, table) : 60;
}

/** One part of a report with its bookmark. */
export function writeSection(
  paper: Paper,
  structure: PDFKit.PDFStructureElement,
  section: DocumentSection,
  { pictures, howHeading, report }: SectionPrint,
): void {
  const { document } = paper;
  const part = document.struct('Sect');
  structure.add(part);
  const plain = { tag: 'P', sizePt: sheet.body, below: 5 } as const;
  // Stories begin on the page of their heading.
  const [first] = section.stories ?? [];
  const begins = first
    ? 60 + storyBegins(paper, first, pictures.get(first.id))
    : sectionBegins(paper, section);
  const heading = { tag: 'H2', sizePt: 14, bold: true, above: 16, below: 5, keepWith: begins } as const;
  writeText(paper, part, section.heading, heading);
  document.outline.addItem(section.heading);
  if (section.words !== undefined) writeWords(paper, part, section.words, report.wordsLabel);
  for (const paragraph of section.paragraphs) writeText(paper, part, paragraph, plain);
  if (section.facts !== undefined) writeFacts(paper, part, section.facts);
  for (const table of section.tables ?? []) {
    writeTable(paper, part, table);
    writeFigureNotes(paper, part, table, howHeading);
  }
  for (const story of section.stories ?? []) writeStory(paper, part, story, pictures.get(story.id));
  for (const note of section.notes ?? [])
    writeText(paper, part, note, { ...plain, sizePt: sheet.small, quiet: true });
  part.end();
}
