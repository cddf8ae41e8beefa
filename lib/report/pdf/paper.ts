import 'server-only';
import type { Typeface } from '@/lib/labels/print/typeface';

/** Margins and letter sizes of a printed report, in points. */
export const sheet = { margin: 56, foot: 34, body: 10, table: 9.5, small: 8.5, lineGap: 2.5 } as const;

export const inks = { text: '#1d2321', quiet: '#565d5a', rule: '#c6c1b5', strong: '#3c4441' } as const;

/** Where the next line goes, and how to write it. */
export type Paper = {
  readonly document: PDFKit.PDFDocument;
  readonly typeface: Typeface;
  readonly left: number;
  readonly width: number;
  /** Lowest point that may be written on. */
  readonly bottom: () => number;
  /** Height of an empty page. */
  readonly wholePage: () => number;
  /** Begins a new page unless that much height is left on this one. */
  readonly keep: (height: number) => void;
};

/** Signs that the typeface lacks, and what stands for them. */
const instead: Readonly<Record<string, string>> = {
  '\u202f': '\u00a0',
  '\u2011': '-',
  '\u00ad': '',
  '\u200b': '',
  '\u200d': '',
  '\ufe0f': '',
  '\t': ' ',
  '\r': '',
  '₂': '2',
  µ: 'u',
  '→': '–',
};

const pictograph = /\p{Extended_Pictographic}/u;

/** There is one typeface, so what it can write of a letter is asked once. */
const known = new Map<string, string>();

function written(letter: string, { typeface }: Paper): string {
  if (letter === '\n' || typeface.canWrite(letter)) return letter;
  return instead[letter] ?? (pictograph.test(letter) ? '' : '?');
}

/** What the typeface can write of a text: signs are replaced, pictographs left out, strange letters a question mark. */
export function writable(text: string, paper: Paper): string {
  let said = '';
  for (const letter of text) {
    let sign = known.get(letter);
    if (sign === undefined) {
      sign = written(letter, paper);
      known.set(letter, sign);
    }
    said += sign;
  }
  return said;
}

export function openPaper(document: PDFKit.PDFDocument, typeface: Typeface): Paper {
  const bottom = () => document.page.height - sheet.margin - sheet.foot;
  return {
    document,
    typeface,
    left: sheet.margin,
    width: document.page.width - 2 * sheet.margin,
    bottom,
    wholePage: () => bottom() - sheet.margin,
    keep: (height) => {
      if (document.y + height > bottom()) document.addPage();
    },
  };
}

/** A hairline at the cursor; for a screen reader it is not there. */
export function rule({ document, left, width }: Paper, weight = 0.5, ink: string = inks.rule): void {
  document.markContent('Artifact', { type: 'Layout' });
  document
    .lineWidth(weight)
    .moveTo(left, document.y)
    .lineTo(left + width, document.y)
    .stroke(ink);
  document.endMarkedContent();
}
