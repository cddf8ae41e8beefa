import type { Box } from '../sheet/sheet-layout';

export type Line = { readonly text: string; readonly bold: boolean };
/** A line where it stands: `topMm` is the top of its letters' line box. */
export type SetLine = Line & { readonly leftMm: number; readonly topMm: number; readonly sizePt: number };

/** Width of a text in millimetres. */
export type Measure = (text: string, bold: boolean, sizePt: number) => number;

export const millimetresPerPoint = 25.4 / 72;
const lineHeight = 1.2;
/** The code is what is read across a shed. */
const codeScale = 2.2;
const smallestPt = 5;
const largestPt = 12;
/** Printers cannot print to the edge of a roll, and sheets shift a little. */
const marginMm = 1;
const largestCodeMm = 34;

export type Parts = { readonly code: Box; readonly text: Box };

/** Divides a label between the square of its code, quiet zone included, and its text beside or below it. */
export function divideLabel({ widthMm, heightMm }: Pick<Box, 'widthMm' | 'heightMm'>): Parts {
  const within = { widthMm: widthMm - 2 * marginMm, heightMm: heightMm - 2 * marginMm };
  if (heightMm > 1.25 * widthMm) {
    const side = Math.min(within.widthMm, within.heightMm * 0.55, largestCodeMm);
    const code = { leftMm: (widthMm - side) / 2, topMm: marginMm, widthMm: side, heightMm: side };
    const text = { ...within, leftMm: marginMm, topMm: marginMm + side, heightMm: within.heightMm - side };
    return { code, text };
  }
  // A low label has no height to lose: the quiet zone is margin enough above and below its code.
  const side = Math.min(heightMm - 1, within.widthMm * 0.48, largestCodeMm);
  const code = { leftMm: 0.5, topMm: (heightMm - side) / 2, widthMm: side, heightMm: side };
  const leftMm = code.leftMm + side;
  return {
    code,
    text: { leftMm, topMm: marginMm, widthMm: widthMm - leftMm - marginMm, heightMm: within.heightMm },
  };
}

function shortened(line: Line, widthMm: number, sizePt: number, measure: Measure): string {
  let text = line.text;
  while (text.length > 1 && measure(`${text}…`, line.bold, sizePt) > widthMm)
    text = text.slice(0, -1).trimEnd();
  return `${text}…`;
}

/** A line as large as `mostPt` and its width allow; one that is too long even when small ends in an ellipsis. */
function fitted(line: Line, widthMm: number, mostPt: number, measure: Measure): Line & { sizePt: number } {
  const natural = measure(line.text, line.bold, mostPt);
  const sizePt = natural <= widthMm ? mostPt : (mostPt * widthMm) / natural;
  if (sizePt >= smallestPt) return { ...line, sizePt };
  return { ...line, text: shortened(line, widthMm, smallestPt, measure), sizePt: smallestPt };
}

/** Sets lines into a box, the first one large; the block stands in the middle of the box's height. */
export function setLines(lines: readonly Line[], box: Box, measure: Measure): SetLine[] {
  const shares = codeScale + lines.length - 1;
  const basePt = Math.min(largestPt, box.heightMm / millimetresPerPoint / lineHeight / shares);
  const set = lines.map((line, at) =>
    fitted(line, box.widthMm, at === 0 ? basePt * codeScale : basePt, measure),
  );
  const heightOf = (sizePt: number) => sizePt * lineHeight * millimetresPerPoint;
  const used = set.reduce((sum, { sizePt }) => sum + heightOf(sizePt), 0);
  let topMm = box.topMm + Math.max(0, (box.heightMm - used) / 2);
  return set.map((line) => {
    const here = { ...line, leftMm: box.leftMm, topMm };
    topMm += heightOf(line.sizePt);
    return here;
  });
}
