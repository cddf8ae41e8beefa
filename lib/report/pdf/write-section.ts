import 'server-only';
import type { DocumentSection } from '../document/report-document';
import { type Paper, sheet } from './paper';
import { writeFacts } from './write-facts';
import { writeFigureNotes } from './write-figure-notes';
import { storyBegins, writeStory } from './write-story';
import { writeTable } from './write-table';
import { writeText } from './write-text';

export type SectionPrint = {
  /** JPEG by story id. */
  readonly pictures: ReadonlyMap<string, Uint8Array>;
  /** Heads the lines that say how figures were worked out. */
  readonly howHeading: string;
};

/** One part of a report with its bookmark. */
export function writeSection(
  paper: Paper,
  structure: PDFKit.PDFStructureElement,
  section: DocumentSection,
  { pictures, howHeading }: SectionPrint,
): void {
  const { document } = paper;
  const part = document.struct('Sect');
  structure.add(part);
  const plain = { tag: 'P', sizePt: sheet.body, below: 5 } as const;
  // Stories begin on the page of their heading.
  const [first] = section.stories ?? [];
  const begins = first ? storyBegins(paper, first, pictures.get(first.id)) : 0;
  const heading = { tag: 'H2', sizePt: 14, bold: true, above: 16, below: 5, keepWith: 60 + begins } as const;
  writeText(paper, part, section.heading, heading);
  document.outline.addItem(section.heading);
  for (const said of section.words?.split(/\n{2,}/) ?? []) writeText(paper, part, said, plain);
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
