import 'server-only';
import readSheets from 'read-excel-file/node';

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

/** The first bytes of every workbook, which is an archive. */
export function isWorkbook(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 0x03 && bytes[3] === 0x04;
}

/** The sheets of a workbook with their rows as text; undefined where it cannot be read. */
export async function readWorkbook(
  bytes: Uint8Array,
): Promise<readonly { readonly name: string; readonly rows: string[][] }[] | undefined> {
  try {
    const sheets = await readSheets(Buffer.from(bytes));
    return sheets.map(({ sheet, data }) => ({
      name: sheet,
      rows: data.map((row) => row.map((cell) => cellText(cell as Cell))),
    }));
  } catch {
    return undefined;
  }
}
