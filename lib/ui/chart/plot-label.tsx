import type { LabelSide } from './labels-that-fit';

/** Anchor and shift of a word from the middle of its mark, in pixels. */
const stands = {
  right: { textAnchor: 'start', x: 9, y: 5 },
  left: { textAnchor: 'end', x: -9, y: 5 },
  above: { textAnchor: 'middle', x: 0, y: -10 },
  below: { textAnchor: 'middle', x: 0, y: 19 },
  'above-left': { textAnchor: 'end', x: 6, y: -10 },
  'below-left': { textAnchor: 'end', x: 6, y: 19 },
} as const satisfies Readonly<Record<LabelSide, object>>;

type Props = {
  readonly text: string;
  /** Where it can be read; nowhere when undefined. */
  readonly onPhone: LabelSide | undefined;
  readonly onDesk: LabelSide | undefined;
};

/** A word beside a mark, on the side where there is room for it. */
export function PlotLabel({ text, onPhone, onDesk }: Props) {
  if (onPhone === onDesk)
    return onDesk === undefined ? null : (
      <text {...stands[onDesk]} className="plot-label">
        {text}
      </text>
    );
  return (
    <>
      {onDesk === undefined ? null : (
        <text {...stands[onDesk]} className="plot-label wide-only">
          {text}
        </text>
      )}
      {onPhone === undefined ? null : (
        <text {...stands[onPhone]} className="plot-label narrow-only">
          {text}
        </text>
      )}
    </>
  );
}
