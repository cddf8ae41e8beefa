import 'server-only';
import type { Box } from '../sheet/sheet-layout';
import { divideLabel, type Line, millimetresPerPoint, setLines } from './arrange-label';
import { type LabelCode, labelCode, quietModules } from './label-code';
import { firstWritable, type LabelText } from './label-text';
import type { Typeface } from './typeface';

type Document = PDFKit.PDFDocument;
const points = (millimetres: number) => millimetres / millimetresPerPoint;

function shifted(box: Box, by: Box): Box {
  return { ...box, leftMm: box.leftMm + by.leftMm, topMm: box.topMm + by.topMm };
}

/** Runs of dark modules as one path, so that no hairline shows between them. */
function drawCode(document: Document, { modules, moduleMm }: LabelCode, square: Box): void {
  const step = points(moduleMm);
  const left = points(square.leftMm) + quietModules * step;
  const top = points(square.topMm) + quietModules * step;
  for (const [row, line] of modules.entries()) {
    for (let from = 0; from < line.length; from += 1) {
      if (!line[from]) continue;
      let to = from;
      while (line[to + 1]) to += 1;
      document.rect(left + from * step, top + row * step, (to - from + 1) * step, step);
      from = to;
    }
  }
  document.fill('#000000');
}

function linesOf(label: LabelText, typeface: Typeface): Line[] {
  const rest = [
    firstWritable(label.species, typeface.canWrite),
    label.date,
    firstWritable(label.site, typeface.canWrite),
  ];
  return [
    { text: label.code, bold: true },
    ...(label.unit === undefined ? [] : [{ text: label.unit, bold: true }]),
    ...rest.map((text) => ({ text, bold: false })),
  ];
}

/** Draws one label into its box of the current page, as a section that a screen reader can read. */
export function drawLabel(
  document: Document,
  parent: PDFKit.PDFStructureElement,
  label: LabelText,
  box: Box,
  typeface: Typeface,
): void {
  const section = document.struct('Sect');
  parent.add(section);
  const parts = divideLabel(box);
  const text = shifted(parts.text, box);
  for (const line of setLines(linesOf(label, typeface), text, typeface.measure))
    section.add(
      document.struct('P', {}, () => {
        document.fillColor('#000000');
        typeface.use(line.bold, line.sizePt);
        document.text(line.text, points(line.leftMm), points(line.topMm), { lineBreak: false });
      }),
    );
  const square = shifted(parts.code, box);
  const code = labelCode(label.address, square.widthMm);
  if (code)
    section.add(document.struct('Figure', { alt: label.address }, () => drawCode(document, code, square)));
  section.end();
}
