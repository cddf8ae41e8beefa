import 'server-only';
import { paragraphsOf } from '@/lib/base/paragraphs-of';
import { inks, type Paper, sheet } from './paper';
import { writeText } from './write-text';

const indent = 14;

/** A line beside what was written since `top`, where that is on one page; for a screen reader it is not there. */
function lineBeside({ document, left }: Paper, top: number): void {
  document.markContent('Artifact', { type: 'Layout' });
  document
    .lineWidth(2)
    .moveTo(left + 1, top)
    .lineTo(left + 1, document.y - 3)
    .stroke(inks.strong);
  document.endMarkedContent();
}

/** The coordinator's own words: headed as such, set in from the figures and beside a line of their own. */
export function writeWords(
  paper: Paper,
  parent: PDFKit.PDFStructureElement,
  words: string,
  label: string,
): void {
  const { document } = paper;
  const apart: Paper = { ...paper, left: paper.left + indent, width: paper.width - indent };
  const quote = document.struct('BlockQuote');
  parent.add(quote);
  const heading = { tag: 'P', sizePt: sheet.small, bold: true, quiet: true, below: 2, keepWith: 28 } as const;
  const lines = [
    { text: label, style: heading },
    ...paragraphsOf(words).map((text) => ({
      text,
      style: { tag: 'P', sizePt: sheet.body, below: 4 } as const,
    })),
  ];
  for (const { text, style } of lines) {
    const { page, y } = document;
    writeText(apart, quote, text, style);
    lineBeside(paper, document.page === page ? y : sheet.margin);
  }
  quote.end();
  document.y += 6;
}
