import type { ChoiceWords, ColumnHead } from './saved-table';

/** The reader's words for what a file holds. */
export type WrittenWords = {
  readonly heading: (column: ColumnHead) => string;
  readonly about: (column: ColumnHead) => string;
  readonly blank: (column: ColumnHead) => string;
  readonly choice: (words: ChoiceWords, value: string) => string;
  readonly yesNo: (value: boolean) => string;
  /** Names of the two sheets of a workbook, and headings of the second. */
  readonly sheets: { readonly rows: string; readonly columns: string };
  readonly columnsTable: {
    readonly column: string;
    readonly about: string;
    readonly unit: string;
    readonly blank: string;
  };
};
