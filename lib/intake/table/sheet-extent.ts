/** How far a sheet may reach, blank cells counted. */
export type SheetLimits = { readonly rows: number; readonly columns: number; readonly cells: number };

const address = /^([A-Z]{0,3})(\d{1,7})$/;
const mark = /<(?:[^\s<>/:]+:)?row(?=[\s/>])|(?<![\w:.-])r\s*=\s*["']([^"']*)["']/g;

function columnOf(letters: string): number {
  return [...letters].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0);
}

/**
 * Whether a part of a workbook, if it is a sheet (ECMA-376, 18.3), reaches no further than that. Rows and cells say
 * where they are (`r`), and every blank place before them is filled when the sheet is read: one cell can ask for
 * thousands of millions. A place that cannot be read is too far.
 */
export function sheetWithin(part: Uint8Array, most: SheetLimits): boolean {
  const text = Buffer.from(part.buffer, part.byteOffset, part.byteLength).toString('latin1');
  if (!text.includes('sheetData')) return true;
  let rows = 0;
  let lastRow = 0;
  let lastColumn = 0;
  for (const [, place] of text.matchAll(mark)) {
    if (place === undefined) {
      rows += 1;
    } else {
      const found = address.exec(place);
      if (!found) return false;
      lastRow = Math.max(lastRow, Number(found[2]));
      lastColumn = Math.max(lastColumn, columnOf(found[1] ?? ''));
    }
    const height = Math.max(rows, lastRow);
    if (height > most.rows || lastColumn > most.columns || height * lastColumn > most.cells) return false;
  }
  return true;
}
