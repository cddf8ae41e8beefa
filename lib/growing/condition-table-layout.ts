import type { ConditionMeasure } from './vocabulary';

/** What a column of a logger's table holds. */
export const columnRoles = [
  'skip',
  'moment',
  'date',
  'time',
  'temperature',
  'humidity',
  'carbon_dioxide',
] as const satisfies readonly (ConditionMeasure | 'skip' | 'moment' | 'date' | 'time')[];
export type ColumnRole = (typeof columnRoles)[number];

export const tableDelimiters = ['comma', 'semicolon', 'tab'] as const;
export type TableDelimiter = (typeof tableDelimiters)[number];

export const decimalMarks = ['point', 'comma'] as const;
export type DecimalMark = (typeof decimalMarks)[number];

export const dateOrders = ['ymd', 'dmy', 'mdy'] as const;
export type DateOrder = (typeof dateOrders)[number];

/** How a logger writes its table; guessed, shown, changed by the person and remembered for the place. */
export type ConditionTableLayout = {
  readonly delimiter: TableDelimiter;
  readonly decimal: DecimalMark;
  readonly dateOrder: DateOrder;
  readonly temperatureUnit: 'celsius' | 'fahrenheit';
  /** Lines before the first reading, the line of column names included. */
  readonly linesBefore: number;
  readonly columns: readonly ColumnRole[];
};
