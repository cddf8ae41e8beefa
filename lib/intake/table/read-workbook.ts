import 'server-only';
import readSheets from 'read-excel-file/node';

// Beyond so many a column of codes would only fill the table of texts.
const mostTexts = 20_000;

type Cell = string | number | boolean | Date | null;

/** A cell as text: numbers with a point, dates as YYYY-MM-DD, whatever the workbook shows them as. */
function cellText(cell: Cell | undefined): string {
  if (cell === null || cell === undefined) return '';
  if (cell instanceof Date) {
    const text = Number.isNaN(cell.getTime()) ? '' : cell.toISOString();
    return text.endsWith('T00:00:00.000Z') ? text.slice(0, 10) : text.slice(0, 16).replace('T', ' ');
  }
  return String(cell);
}

/** Cells as text, each text kept once, a row at a time in the place of what it was read as: half the memory of a copy. */
function asText(rows: (Cell[] | string[])[]): string[][] {
  const texts = new Map<string, string>();
  for (const [index, row] of rows.entries())
    rows[index] = row.map((cell) => {
      const text = cellText(cell).replaceAll('\u0000', '\ufffd');
      const before = texts.get(text);
      if (before === undefined && texts.size < mostTexts) texts.set(text, text);
      return before ?? text;
    });
  return rows as string[][];
}

/** The first bytes of every workbook, which is an archive. */
export function isWorkbook(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 0x03 && bytes[3] === 0x04;
}

/** The sheets of a workbook with their rows as text; undefined where it cannot be read. */
export async function readWorkbook(
  bytes: Uint8Array,
): Promise<readonly { readonly name: string; readonly rows: string[][] }[] | undefined> {
  try {
    const sheets = await readSheets(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength));
    return sheets.map(({ sheet, data }) => ({ name: sheet, rows: asText(data as Cell[][]) }));
  } catch {
    return undefined;
  }
}
