import 'server-only';
import path from 'node:path';
import { millimetresPerPoint } from './arrange-label';

// From the folder the server runs in: the build copies these two files there (next.config.ts).
const folder = path.join('node_modules', '@expo-google-fonts', 'atkinson-hyperlegible-next');
const fileOf = (weight: string) =>
  path.join(process.cwd(), folder, weight, `AtkinsonHyperlegibleNext_${weight}.ttf`);

/** Regular and bold of the one typeface, made for letters and digits that are not mistaken for each other. */
export const regularFile = () => fileOf('400Regular');
export const boldFile = () => fileOf('700Bold');

/** The typeface within one document. */
export type Typeface = {
  readonly use: (bold: boolean, sizePt: number) => void;
  readonly measure: (text: string, bold: boolean, sizePt: number) => number;
  readonly canWrite: (text: string) => boolean;
};

type Lettered = { font: { hasGlyphForCodePoint(codePoint: number): boolean } };
function isLettered(font: unknown): font is Lettered {
  return typeof font === 'object' && font !== null && 'font' in font && typeof font.font === 'object';
}

/** Puts the typeface into a document. */
export function openTypeface(document: PDFKit.PDFDocument): Typeface {
  // By their files: under names of ours the library would open the document's first font anew at each use.
  const [regular, heavy] = [regularFile(), boldFile()];
  const use = (bold: boolean, sizePt: number) => {
    document.font(bold ? heavy : regular).fontSize(sizePt);
  };
  use(false, 10);
  // The library's types do not name the open font, which knows its letters.
  const open: unknown = Reflect.get(document, '_font');
  if (!isLettered(open)) throw new Error('the typeface of labels could not be opened');
  const { font } = open;
  return {
    use,
    measure: (text, bold, sizePt) => {
      use(bold, sizePt);
      return document.widthOfString(text) * millimetresPerPoint;
    },
    canWrite: (text) => [...text].every((letter) => font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0)),
  };
}
