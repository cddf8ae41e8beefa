import 'server-only';
import { inks, type Paper, sheet, writable } from './paper';

export type TextStyle = {
  readonly tag: 'H1' | 'H2' | 'H3' | 'P' | 'Caption';
  readonly sizePt: number;
  readonly bold?: boolean;
  readonly quiet?: boolean;
  readonly above?: number;
  readonly below?: number;
  /** Height that has to follow on the same page, so that a heading never stands alone at the foot. */
  readonly keepWith?: number;
};

/** Writes one paragraph at the cursor and tells a screen reader what it is. */
export function writeText(
  paper: Paper,
  parent: PDFKit.PDFStructureElement,
  text: string,
  style: TextStyle,
): void {
  const { document, typeface, left, width } = paper;
  const said = writable(text, paper);
  if (said.trim() === '') return;
  const options = { width, lineGap: sheet.lineGap };
  typeface.use(style.bold ?? false, style.sizePt);
  const height = document.heightOfString(said, options);
  document.y += style.above ?? 0;
  // A paragraph longer than what is left may break; its first two lines stay together.
  paper.keep(Math.min(height, 2.8 * style.sizePt) + (style.keepWith ?? 0));
  parent.add(
    document.struct(style.tag, {}, () => {
      typeface.use(style.bold ?? false, style.sizePt);
      document.fillColor(style.quiet ? inks.quiet : inks.text);
      document.text(said, left, document.y, options);
    }),
  );
  document.y += style.below ?? 0;
}
