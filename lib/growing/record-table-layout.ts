import type { DateOrder, DecimalMark, TableDelimiter } from './condition-table-layout';

/** What the rows of a table brought in from elsewhere are. */
export const recordTableKinds = [
  'harvests',
  'batches',
  'treatments',
  'notebook',
  'findings',
  'spawn_lots',
  'substrate_lots',
  'sites',
  'people',
] as const;
export type RecordTableKind = (typeof recordTableKinds)[number];

export const tableEncodings = ['utf-8', 'utf-16le', 'windows-1252'] as const;
export type TableEncoding = (typeof tableEncodings)[number];

/** Units a column of quantities may be written in, as the entry parsers know them. */
export const columnUnits = [
  'kg',
  'g',
  'lb',
  'oz',
  'cm',
  'mm',
  'm',
  'in',
  'ft',
  'm2',
  'ft2',
  'L',
  'mL',
  'gal',
  'celsius',
  'fahrenheit',
  'min',
  'h',
] as const;
export type ColumnUnit = (typeof columnUnits)[number];

/**
 * What one column holds: a field of the kind of record, or nothing that is taken in. `weak`: guessed by a part of its
 * heading, and nobody has said yet that it is right.
 */
export type TableColumn = {
  readonly field: string | null;
  readonly unit: ColumnUnit | null;
  readonly weak?: true;
};

/** How a table of records is written; guessed, shown, changed by the person and remembered for the site. */
export type RecordTableLayout = {
  readonly format: 'csv' | 'xlsx';
  readonly encoding: TableEncoding;
  readonly delimiter: TableDelimiter;
  /** Which sheet of a workbook, from 0. */
  readonly sheet: number;
  /** Names of all its sheets; none for a table of text. */
  readonly sheets: readonly string[];
  readonly decimal: DecimalMark;
  readonly dateOrder: DateOrder;
  /** Line that names the columns, from 1; 0 when none does. */
  readonly headerLine: number;
  readonly headers: readonly string[];
  readonly columns: readonly TableColumn[];
  /** Whether a person said how the columns are to be understood; else they are as they were guessed. */
  readonly settled: boolean;
  /** Lines below the headings that are sums of the others and are left out, from 1. */
  readonly totals: readonly number[];
  /** What holds for the whole table where no column says it, by field: a value of its list, an id, a date, a number. */
  readonly given: Readonly<Record<string, string>>;
};
