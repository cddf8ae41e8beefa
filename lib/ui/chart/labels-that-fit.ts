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

/**
 * The keys of the labels that can be read at a plot of this width, those named first being placed first: a label that
 * would lie over one already placed is left out.
 */
export function labelsThatFit(labels: readonly PlacedLabel[], widthPx: number): ReadonlySet<string> {
  const placed: { readonly key: string; readonly from: number; readonly to: number; readonly y: number }[] =
    [];
  for (const { key, xPercent, y, text } of labels) {
    const mark = (xPercent / 100) * widthPx;
    const length = markPx + text.length * letterPx;
    const [from, to] = xPercent > turnsLeftAt ? [mark - length, mark] : [mark, mark + length];
    const free = placed.every(
      (other) => to <= other.from || from >= other.to || Math.abs(y - other.y) >= linePx,
    );
    if (free) placed.push({ key, from, to, y });
  }
  return new Set(placed.map(({ key }) => key));
}
