import 'server-only';
import type { TableDelimiter } from '@/lib/growing/condition-table-layout';
import type { TableEncoding } from '@/lib/growing/record-table-layout';
import { decodeText, guessEncoding } from './decode-text';
import { isWorkbook, readWorkbook } from './read-workbook';
import { guessRowDelimiter, splitRows } from './split-rows';

/** How the bytes are to be read; what is left out is guessed. */
export type ReadingWishes = {
  readonly encoding?: TableEncoding;
  readonly delimiter?: TableDelimiter;
  readonly sheet?: number;
};

export type ReadRows = {
  readonly rows: readonly (readonly string[])[];
  readonly written: {
    readonly format: 'csv' | 'xlsx';
    readonly encoding: TableEncoding;
    readonly delimiter: TableDelimiter;
    readonly sheet: number;
    readonly sheets: readonly string[];
  };
};

export const mostRows = 200_000;
export const mostColumns = 200;

/** Cells of a workbook can share one text, which is kept for each of them. */
const mostText = 80_000_000;

const ofWorkbook = {
  /** So many bytes unpacked hold about as many rows as may come at once. */
  unpacked: 80_000_000,
  ...{ rows: mostRows, columns: mostColumns, text: mostText },
  /** Blank cells between and beside the others are cells, too. */
  cells: 6_000_000,
};

function textLength(rows: readonly (readonly string[])[]): number {
  return rows.reduce((sum, row) => row.reduce((all, { length }) => all + length, sum), 0);
}

// The database holds no text with this character in it.
const clean = (cell: string) => cell.replaceAll('\u0000', '\ufffd');

/** The rows of a file as text. A code says why there are none: a workbook that cannot be read, nothing in it, too much. */
export async function readTable(
  bytes: Uint8Array,
  wishes: ReadingWishes,
): Promise<ReadRows | 'table-unreadable' | 'table-empty' | 'table-too-long'> {
  const found = isWorkbook(bytes) ? await fromWorkbook(bytes, wishes) : fromText(bytes, wishes);
  if (typeof found === 'string') return found;
  if (found.rows.length > mostRows || found.rows.some(({ length }) => length > mostColumns))
    return 'table-too-long';
  if (textLength(found.rows) > mostText) return 'table-too-long';
  return found.rows.some((row) => row.some((cell) => cell.trim() !== '')) ? found : 'table-empty';
}

async function fromWorkbook(bytes: Uint8Array, { sheet: wanted = 0 }: ReadingWishes) {
  const read = await readWorkbook(bytes, wanted, ofWorkbook);
  if (typeof read === 'string') return read;
  const { rows, sheet, sheets } = read;
  const written = { format: 'xlsx', encoding: 'utf-8', delimiter: 'comma', sheet, sheets } as const;
  return { rows, written };
}

function fromText(bytes: Uint8Array, wishes: ReadingWishes): ReadRows | 'table-too-long' {
  const encoding = wishes.encoding ?? guessEncoding(bytes);
  const text = clean(decodeText(bytes, encoding));
  const delimiter = wishes.delimiter ?? guessRowDelimiter(text);
  const rows = splitRows(text, delimiter, mostRows + 1);
  if (rows === undefined) return 'table-too-long';
  return {
    rows,
    written: { format: 'csv', encoding, delimiter, sheet: 0, sheets: [] },
  };
}
