/** A mark of the plot: `xPercent` across it, `y` in pixels from its top. */
export type PlacedMark = { readonly key: string; readonly xPercent: number; readonly y: number };

/** A mark with a word to be written beside it. */
export type PlacedLabel = PlacedMark & { readonly text: string };

/** Where the word stands, seen from its mark. */
export type LabelSide = 'right' | 'left' | 'above' | 'below' | 'above-left' | 'below-left';

/** Marks right of this part of the plot have their word on the left, if there is room. */
const turnsLeftAt = 70;

// At the size of small text; a little wide, so that a word that fits here fits in every typeface of a browser.
const letterPx = 9.5;
const linePx = 17;
const markPx = 9;
const radiusPx = 6;

type Box = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

const apart = (one: Box, other: Box) =>
  one.right <= other.left || one.left >= other.right || one.bottom <= other.top || one.top >= other.bottom;

/**
 * On which side of its mark each label can be read at a plot of this size, those named first being placed first. A label that
 * on every side would lie over one already placed, over another mark or beyond the plot is left out.
 */
export function labelsThatFit(
  labels: readonly PlacedLabel[],
  marks: readonly PlacedMark[],
  plot: { readonly widthPx: number; readonly heightPx: number },
): ReadonlyMap<string, LabelSide> {
  const boxes: Box[] = [];
  const placed = new Map<string, LabelSide>();
  const dots = marks.map(({ key, xPercent, y }) => {
    const x = (xPercent / 100) * plot.widthPx;
    return { key, box: { left: x - radiusPx, right: x + radiusPx, top: y - radiusPx, bottom: y + radiusPx } };
  });
  for (const label of labels) {
    const fits = (box: Box) =>
      box.left >= 0 &&
      box.right <= plot.widthPx + radiusPx &&
      box.top >= 0 &&
      box.bottom <= plot.heightPx &&
      boxes.every((other) => apart(box, other)) &&
      dots.every(({ key, box: dot }) => key === label.key || apart(box, dot));
    const side = sidesOf(label).find((one) => fits(boxOf(label, one, plot.widthPx)));
    if (side === undefined) continue;
    boxes.push(boxOf(label, side, plot.widthPx));
    placed.set(label.key, side);
  }
  return placed;
}

function sidesOf({ xPercent }: PlacedLabel): readonly LabelSide[] {
  return xPercent > turnsLeftAt
    ? ['left', 'right', 'above', 'below', 'above-left', 'below-left']
    : ['right', 'left', 'above', 'below'];
}

function boxOf({ xPercent, y, text }: PlacedLabel, side: LabelSide, widthPx: number): Box {
  const x = (xPercent / 100) * widthPx;
  const length = text.length * letterPx;
  if (side === 'right') return { left: x, right: x + markPx + length, ...beside(y) };
  if (side === 'left') return { left: x - markPx - length, right: x, ...beside(y) };
  const lines = side === 'above' || side === 'above-left' ? over(y) : under(y);
  return side === 'above' || side === 'below'
    ? { left: x - length / 2, right: x + length / 2, ...lines }
    : { left: x + radiusPx - length, right: x + radiusPx, ...lines };
}

const beside = (y: number) => ({ top: y - linePx / 3, bottom: y + linePx / 3 });
const over = (y: number) => ({ top: y - radiusPx - linePx, bottom: y - radiusPx });
const under = (y: number) => ({ top: y + radiusPx, bottom: y + radiusPx + linePx });
