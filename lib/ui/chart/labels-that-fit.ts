/** A word beside a mark: `xPercent` across the plot, `y` in pixels from its top; it stands left of marks far to the right. */
export type PlacedLabel = {
  readonly key: string;
  readonly xPercent: number;
  readonly y: number;
  readonly text: string;
};

/** Marks right of this part of the plot have their word on the left. */
export const turnsLeftAt = 70;

// At the size of small text; a little wide, so that a word that fits here fits in every typeface of a browser.
const letterPx = 9.5;
const linePx = 17;
const markPx = 9;

/** A mark of the plot, with or without a word. */
export type PlacedMark = Pick<PlacedLabel, 'key' | 'xPercent' | 'y'>;

const radiusPx = 6;

/**
 * The keys of the labels that can be read at a plot of this width, those named first being placed first: a label that
 * would lie over one already placed, or over another mark, is left out.
 */
export function labelsThatFit(
  labels: readonly PlacedLabel[],
  marks: readonly PlacedMark[],
  widthPx: number,
): ReadonlySet<string> {
  const placed: { readonly key: string; readonly from: number; readonly to: number; readonly y: number }[] =
    [];
  for (const { key, xPercent, y, text } of labels) {
    const mark = (xPercent / 100) * widthPx;
    const length = markPx + text.length * letterPx;
    const [from, to] = xPercent > turnsLeftAt ? [mark - length, mark] : [mark, mark + length];
    const free = placed.every(
      (other) => to <= other.from || from >= other.to || Math.abs(y - other.y) >= linePx,
    );
    const clear = marks.every((other) => {
      const at = (other.xPercent / 100) * widthPx;
      const beside = at + radiusPx <= from || at - radiusPx >= to;
      return other.key === key || beside || Math.abs(y - other.y) >= radiusPx + linePx / 3;
    });
    if (free && clear) placed.push({ key, from, to, y });
  }
  return new Set(placed.map(({ key }) => key));
}
