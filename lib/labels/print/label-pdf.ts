import 'server-only';
import PDFDocument from 'pdfkit';
import { fillSheets } from '../sheet/fill-sheets';
import { placeBox, type SheetLayout } from '../sheet/sheet-layout';
import { millimetresPerPoint } from './arrange-label';
import { collectPages } from './collect-pages';
import { drawLabel } from './draw-label';
import type { LabelText } from './label-text';
import { openTypeface, regularFile } from './typeface';

export type LabelPrint = {
  readonly labels: readonly LabelText[];
  readonly layout: SheetLayout;
  /** The first place used on the first page, from 1: an opened sheet is used up. */
  readonly firstPlace: number;
  /** Draws the edge of each label, for plain paper that is cut or to try where the labels fall. */
  readonly outline: boolean;
  readonly title: string;
  readonly language: 'en' | 'es';
};

const points = (millimetres: number) => millimetres / millimetresPerPoint;

/** Asks viewers to print the page in its own size: a page fitted to the paper shifts every label. */
function printAtFullSize(document: PDFKit.PDFDocument): void {
  const root: unknown = Reflect.get(document, '_root');
  const preferences: unknown = Reflect.get(Object(Reflect.get(Object(root), 'data')), 'ViewerPreferences');
  const data: unknown = Reflect.get(Object(preferences), 'data');
  if (typeof data !== 'object' || data === null) throw new Error('the document has no viewer preferences');
  Reflect.set(data, 'PrintScaling', 'None');
}

/**
 * Label sheets as a tagged PDF whose page and label boxes have exactly the sizes of the layout.
 *
 * @throws RangeError when the layout has no such first place
 */
export async function labelPdf(print: LabelPrint): Promise<Uint8Array<ArrayBuffer>> {
  const { layout, labels, title, language } = print;
  const document = new PDFDocument({
    autoFirstPage: false,
    font: regularFile(),
    pdfVersion: '1.7',
    tagged: true,
    lang: language,
    displayTitle: true,
    info: { Title: title },
  });
  const whole = collectPages(document);
  printAtFullSize(document);
  const typeface = openTypeface(document);
  const structure = document.struct('Document');
  document.addStructure(structure);
  for (const page of fillSheets(layout, labels.length, print.firstPlace)) {
    document.addPage({ size: [points(layout.pageWidthMm), points(layout.pageHeightMm)], margin: 0 });
    for (const { label, place } of page) {
      const text = labels[label];
      if (!text) continue;
      const box = placeBox(layout, place);
      if (print.outline) {
        document.markContent('Artifact');
        document
          .lineWidth(0.4)
          .rect(points(box.leftMm), points(box.topMm), points(box.widthMm), points(box.heightMm));
        document.stroke('#767676');
        document.endMarkedContent();
      }
      drawLabel(document, structure, text, box, typeface);
    }
  }
  structure.end();
  document.end();
  return whole;
}
