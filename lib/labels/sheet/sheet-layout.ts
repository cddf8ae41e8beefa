/** Where the labels are on a page; all lengths in millimetres. A roll is a page of the label's own size. */
export type SheetLayout = {
  readonly pageWidthMm: number;
  readonly pageHeightMm: number;
  readonly labelWidthMm: number;
  readonly labelHeightMm: number;
  readonly columns: number;
  readonly rows: number;
  /** Page edge to the first label. */
  readonly leftMm: number;
  readonly topMm: number;
  /** Between two labels. */
  readonly gapAcrossMm: number;
  readonly gapDownMm: number;
};

/** A rectangle on a page, from its upper left corner. */
export type Box = {
  readonly leftMm: number;
  readonly topMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
};

export type SheetProblem = 'label-too-small' | 'label-too-wide' | 'label-too-high';

/** Sizes rounded from inches may stand out by this much. */
const slackMm = 0.5;
/** The smallest label that holds a code a phone can read, with its margins, beside a batch code. */
export const leastLabelMm = { width: 38, height: 21 } as const;

export function labelsPerPage({ columns, rows }: SheetLayout): number {
  return columns * rows;
}

/** What is wrong with a layout; undefined when all labels fit the page and a code fits the label. */
export function sheetProblem(layout: SheetLayout): SheetProblem | undefined {
  const { columns, rows, labelWidthMm, labelHeightMm } = layout;
  const upright = labelHeightMm > labelWidthMm;
  const [long, short] = upright ? [labelHeightMm, labelWidthMm] : [labelWidthMm, labelHeightMm];
  if (long < leastLabelMm.width || short < leastLabelMm.height) return 'label-too-small';
  const across = layout.leftMm + columns * labelWidthMm + (columns - 1) * layout.gapAcrossMm;
  const down = layout.topMm + rows * labelHeightMm + (rows - 1) * layout.gapDownMm;
  if (across > layout.pageWidthMm + slackMm) return 'label-too-wide';
  return down > layout.pageHeightMm + slackMm ? 'label-too-high' : undefined;
}

/** The box of one place of a page, counted from 0 along the rows. */
export function placeBox(layout: SheetLayout, place: number): Box {
  const column = place % layout.columns;
  const row = Math.floor(place / layout.columns);
  return {
    leftMm: layout.leftMm + column * (layout.labelWidthMm + layout.gapAcrossMm),
    topMm: layout.topMm + row * (layout.labelHeightMm + layout.gapDownMm),
    widthMm: layout.labelWidthMm,
    heightMm: layout.labelHeightMm,
  };
}
