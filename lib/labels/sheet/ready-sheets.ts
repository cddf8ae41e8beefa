import type { SheetLayout } from './sheet-layout';

export type Paper = 'a4' | 'letter' | 'roll';
export type ReadySheet = SheetLayout & { readonly key: string; readonly paper: Paper };

const a4 = { pageWidthMm: 210, pageHeightMm: 297 };
const letter = { pageWidthMm: 215.9, pageHeightMm: 279.4 };

type Grid = Pick<SheetLayout, 'labelWidthMm' | 'labelHeightMm' | 'columns' | 'rows'> &
  Partial<Pick<SheetLayout, 'gapAcrossMm'>>;

/** A grid in the middle of its page, as label sheets are cut. */
function centred(paper: 'a4' | 'letter', grid: Grid): ReadySheet {
  const { pageWidthMm, pageHeightMm } = paper === 'a4' ? a4 : letter;
  const gapAcrossMm = grid.gapAcrossMm ?? 0;
  const across = grid.columns * grid.labelWidthMm + (grid.columns - 1) * gapAcrossMm;
  const middle = (page: number, used: number) => Number(((page - used) / 2).toFixed(3));
  return {
    key: `${paper}-${grid.labelWidthMm.toFixed(1)}x${grid.labelHeightMm.toFixed(1)}-${grid.columns * grid.rows}`,
    paper,
    pageWidthMm,
    pageHeightMm,
    ...grid,
    gapAcrossMm,
    gapDownMm: 0,
    leftMm: middle(pageWidthMm, across),
    topMm: middle(pageHeightMm, grid.rows * grid.labelHeightMm),
  };
}

function roll(labelWidthMm: number, labelHeightMm: number): ReadySheet {
  return {
    key: `roll-${labelWidthMm}x${labelHeightMm}`,
    paper: 'roll',
    pageWidthMm: labelWidthMm,
    pageHeightMm: labelHeightMm,
    ...{ labelWidthMm, labelHeightMm, columns: 1, rows: 1 },
    ...{ leftMm: 0, topMm: 0, gapAcrossMm: 0, gapDownMm: 0 },
  };
}

const grid = (
  labelWidthMm: number,
  labelHeightMm: number,
  columns: number,
  rows: number,
  gapAcrossMm = 0,
) => ({
  ...{ labelWidthMm, labelHeightMm, columns, rows, gapAcrossMm },
});

/** Sheets and rolls sold widely (common practice), named by their sizes. Others a network adds itself. */
export const readySheets: readonly ReadySheet[] = [
  centred('a4', grid(70, 37, 3, 8)),
  centred('a4', grid(63.5, 38.1, 3, 7, 2.5)),
  centred('a4', grid(99.1, 67.7, 2, 4, 2.5)),
  centred('a4', grid(105, 57, 2, 5)),
  centred('a4', grid(38.1, 21.2, 5, 13, 2.5)),
  centred('letter', grid(66.675, 25.4, 3, 10, 3.175)),
  centred('letter', grid(101.6, 50.8, 2, 5, 4.7625)),
  centred('letter', grid(101.6, 33.867, 2, 7, 4.7625)),
  roll(62, 29),
  roll(57, 32),
  roll(100, 50),
];
