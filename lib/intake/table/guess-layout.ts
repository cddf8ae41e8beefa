import type { DateOrder, DecimalMark } from '@/lib/growing/condition-table-layout';
import type { ColumnUnit, RecordTableLayout } from '@/lib/growing/record-table-layout';
import { dateParts } from '../conditions/read-moment';
import { givenByHeadings } from './given-by-headings';
import { headerFits, mapColumns } from './map-columns';
import { guessDateOrder } from './read-date';
import type { TableField } from './table-field';
import { totalsLines } from './totals-lines';

const sampleRows = 400;
const headerWithin = 20;

/** How the reader usually writes, for what a table itself does not tell. */
export type UsualWriting = {
  readonly dateOrder: DateOrder;
  readonly decimal: DecimalMark;
  /** Units of masses, volumes and temperatures. */
  readonly units: readonly ColumnUnit[];
};

/** The line that names the columns, from 1: the one with the most known names; 0 where no line has two. */
function headerLine(rows: readonly (readonly string[])[], fields: readonly TableField[]): number {
  // A line with an address in it tells of somebody; it names no columns.
  const known = rows
    .slice(0, headerWithin)
    .map((row) => (row.some((cell) => cell.includes('@')) ? [] : row))
    .map((row) => row.filter((cell) => cell.length < 80 && headerFits(cell, fields)).length);
  const most = Math.max(0, ...known);
  if (most >= 2) return known.indexOf(most) + 1;
  // One line of names that nobody knows is still a line of names: it has no number and no date in it.
  const first = rows[0] ?? [];
  return first.length > 1 && first.every((cell) => !/[\d@]/.test(cell)) ? 1 : 0;
}

function guessDecimal(cells: readonly string[], usual: DecimalMark): DecimalMark {
  const numbers = cells.filter(
    (cell) => /^[-+]?[\d.,\s]+\s*\p{L}*$/u.test(cell) && dateParts(cell) === undefined,
  );
  const last = (sign: RegExp) => numbers.filter((cell) => sign.test(cell.replace(/[^\d.,]/g, ''))).length;
  // A sign before other than three digits can only be a decimal sign.
  const commas = last(/,(\d{1,2}|\d{4,})$/);
  const points = last(/\.(\d{1,2}|\d{4,})$/);
  if (commas !== points) return commas > points ? 'comma' : 'point';
  return usual;
}

/**
 * Guesses how a table is written from its first rows; what it does not tell is taken from how the reader writes.
 * `namesIn` is the line of names where a person said which it is.
 */
export function guessRecordLayout(
  rows: readonly (readonly string[])[],
  fields: readonly TableField[],
  written: Pick<RecordTableLayout, 'format' | 'encoding' | 'delimiter' | 'sheet' | 'sheets'>,
  usual: UsualWriting,
  namesIn?: number,
): RecordTableLayout {
  const line = namesIn ?? headerLine(rows, fields);
  const width = Math.max(0, ...rows.slice(0, sampleRows).map(({ length }) => length));
  const headers = Array.from({ length: width }, (_, index) =>
    line === 0 ? '' : (rows[line - 1]?.[index] ?? '').trim(),
  );
  const sample = rows.slice(line, line + sampleRows).map((row) => row.map((cell) => cell.trim()));
  const cells = sample.flat();
  const decimal = written.format === 'xlsx' ? 'point' : guessDecimal(cells, usual.decimal);
  const numbers = headers.map((_, index) =>
    sample.flatMap((row) => {
      const text = (row[index] ?? '').replace(decimal === 'comma' ? ',' : '\u0000', '.');
      return /^\d+(\.\d+)?$/.test(text) ? [Number(text)] : [];
    }),
  );
  const columns = mapColumns(headers, fields, numbers, usual.units);
  return {
    ...written,
    decimal,
    dateOrder: guessDateOrder(cells, usual.dateOrder),
    headerLine: line,
    headers,
    columns,
    given: givenByHeadings(headers, columns, fields),
    totals: totalsLines(rows, line),
    settled: false,
  };
}

function sameHeadings(guessed: RecordTableLayout, remembered: RecordTableLayout): boolean {
  return (
    guessed.headers.length === remembered.headers.length &&
    guessed.headers.every((header, index) => header === remembered.headers[index])
  );
}

/** Where each heading stands that stands once. */
function onceNamed(headers: readonly string[]): ReadonlyMap<string, number> {
  const at = new Map<string, number>();
  for (const [index, header] of headers.entries())
    if (header !== '' && headers.indexOf(header) === headers.lastIndexOf(header)) at.set(header, index);
  return at;
}

/**
 * A remembered table of which a person said it tells what the columns under its headings hold, whatever columns there are besides; how this one is
 * written, it shows itself.
 */
export function asRemembered(
  guessed: RecordTableLayout,
  remembered: RecordTableLayout | undefined,
): RecordTableLayout {
  // What was only guessed is guessed anew: more may be known by now.
  if (remembered?.settled !== true) return guessed;
  if (sameHeadings(guessed, remembered)) return { ...guessed, settled: true, columns: remembered.columns };
  const [here, there] = [onceNamed(guessed.headers), onceNamed(remembered.headers)];
  const before = guessed.headers.map((header) =>
    here.has(header) ? remembered.columns[there.get(header) ?? -1] : undefined,
  );
  const taken = new Set(before.flatMap((column) => column?.field ?? []));
  const columns = guessed.columns.map((column, index) => {
    const known = before[index];
    if (known?.field != null) return known;
    return column.field !== null && taken.has(column.field) ? { field: null, unit: null } : column;
  });
  return { ...guessed, columns };
}

/**
 * How the writer of a remembered table usually writes, for what the next one with the same headings does not show; a
 * workbook, whose numbers and days are always written alike, tells nothing about a text, and a text nothing about it.
 */
export function usualAsRemembered(
  usual: UsualWriting,
  guessed: RecordTableLayout,
  remembered: RecordTableLayout | undefined,
): UsualWriting {
  if (remembered === undefined || remembered.format !== guessed.format) return usual;
  if (!sameHeadings(guessed, remembered)) return usual;
  return { ...usual, decimal: remembered.decimal, dateOrder: remembered.dateOrder };
}
