import { type CellReading, cellText } from './cell-text';
import { TooLong } from './open-archive';
import { readPart } from './read-part';

/** How far a sheet may reach, blank cells counted, and how much text all its cells may hold. */
export type SheetLimits = {
  readonly rows: number;
  readonly columns: number;
  readonly cells: number;
  readonly text: number;
};

const address = /^([A-Z]{1,3})(\d{1,7})$/;

function columnOf(letters: string): number {
  let number = 0;
  for (const letter of letters) number = number * 26 + letter.charCodeAt(0) - 64;
  return number;
}

/**
 * The rows of a sheet as text (ECMA-376 part 1, 18.3), each text kept once. Rows and cells say where they are (`r`), or
 * follow one another. Blank places before them are filled, and one cell could ask for thousands of millions of them: a
 * sheet that reaches too far, or that says a place nobody can read, is not read to its end.
 */
export async function readSheet(
  bytes: AsyncIterable<Uint8Array>,
  reading: CellReading,
  most: SheetLimits,
): Promise<string[][]> {
  const rows: string[][] = [];
  const known = new Map<string, string>();
  let [row, column, width, left] = [0, 0, 0, most.text];
  let [type, style, value, inline] = ['n', 0, '', ''];
  let into: 'value' | 'inline' | undefined;
  let aloud = false;

  function reach() {
    width = Math.max(width, column);
    if (row > most.rows || column > most.columns || row * width > most.cells) throw new TooLong('sheet');
  }
  function openRow(r: string | undefined) {
    row = r === undefined ? row + 1 : Number(r);
    if (!Number.isInteger(row) || row < 1) throw new TooLong('row');
    column = 0;
    reach();
  }
  function openCell(r: string | undefined) {
    if (r === undefined) column += 1;
    else {
      const place = address.exec(r);
      if (!place) throw new TooLong('cell');
      [column, row] = [columnOf(place[1] ?? ''), Number(place[2])];
    }
    reach();
  }
  function keepCell() {
    const text = cellText({ type, style, value, inline }, reading).replaceAll('\u0000', '\ufffd');
    if (text === '') return;
    left -= text.length;
    if (left < 0) throw new TooLong('text');
    const once = known.get(text) ?? text;
    if (once === text && known.size < mostKnown) known.set(text, text);
    while (rows.length < row) rows.push([]);
    const cells = rows[row - 1];
    while (cells !== undefined && cells.length < column - 1) cells.push('');
    if (cells !== undefined) cells[column - 1] = once;
  }

  await readPart(bytes, {
    open: (name, attributes) => {
      if (name === 'row') openRow(attributes.r);
      else if (name === 'c') {
        openCell(attributes.r);
        [type, style, value, inline] = [attributes.t ?? 'n', Number(attributes.s ?? 0), '', ''];
      } else if (name === 'v') into = 'value';
      else if (name === 't') into = 'inline';
      else if (name === 'rPh') aloud = true;
    },
    text: (text) => {
      if (into === 'value') value += text;
      else if (into === 'inline' && !aloud) inline += text;
    },
    close: (name) => {
      if (name === 'v' || name === 't') into = undefined;
      else if (name === 'rPh') aloud = false;
      else if (name === 'c') keepCell();
    },
  });
  return rows;
}

// Beyond so many a column of codes would only fill the table of texts.
const mostKnown = 20_000;
