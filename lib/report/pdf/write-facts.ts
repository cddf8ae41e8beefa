import 'server-only';
import type { DocumentFact } from '../document/report-document';
import { inks, type Paper, sheet, writable } from './paper';

const gap = 18;
const valueSize = 17;

/** The few numbers of the beginning, large, beside each other; the name comes first also for a screen reader. */
export function writeFacts(
  paper: Paper,
  parent: PDFKit.PDFStructureElement,
  facts: readonly DocumentFact[],
): void {
  const { document, typeface, left, width: whole } = paper;
  // Three beside each other, four where that spares a line of one.
  const perLine = facts.length === 4 ? 4 : 3;
  const width = (whole - (perLine - 1) * gap) / perLine;
  for (let start = 0; start < facts.length; start += perLine) {
    const line = facts.slice(start, start + perLine).map(({ label, text }) => {
      const [name, value] = [writable(label, paper), writable(text, paper)];
      typeface.use(false, sheet.small);
      const nameHeight = document.heightOfString(name, { width });
      typeface.use(true, valueSize);
      return { name, value, nameHeight, valueHeight: document.heightOfString(value, { width }) };
    });
    const nameHeight = Math.max(...line.map((one) => one.nameHeight));
    const height = nameHeight + Math.max(...line.map((one) => one.valueHeight));
    document.y += 4;
    paper.keep(height + 8);
    const top = document.y;
    for (const [at, { name, value, nameHeight: own }] of line.entries()) {
      const x = left + at * (width + gap);
      parent.add(
        document.struct('P', {}, () => {
          typeface.use(false, sheet.small);
          document.fillColor(inks.quiet).text(name, x, top + nameHeight - own, { width });
          typeface.use(true, valueSize);
          document.fillColor(inks.text).text(value, x, top + nameHeight + 1, { width });
        }),
      );
    }
    document.y = top + height + 8;
  }
}
