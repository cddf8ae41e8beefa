import type { ReadContext } from '@/lib/access/context';
import type { Language } from '@/lib/database/generated/enums';
import type { UcumUnit } from '@/lib/growing/ucum-codes';
import type { ColumnKey } from './column-key';

/** One cell: dates as 'YYYY-MM-DD', moments as 'YYYY-MM-DD HH:MM' by the site's clock, null for a blank. */
export type Cell = string | number | boolean | null;

/** What an empty cell of a column means. `never`: the column has none. */
export type Blank = 'never' | 'notRecorded' | 'notApplicable' | 'notYet' | 'none' | 'notShared';

/** Groups of the vocabulary from which a choice is written in the reader's words. */
export type ChoiceWords =
  | 'containerKind'
  | 'moistureSource'
  | 'dryMassFrom'
  | 'closeReason'
  | 'spentDestination'
  | 'contaminationSign'
  | 'cropStage'
  | 'findingAction'
  | 'lossCause'
  | 'checkKind'
  | 'trimState'
  | 'readingPlace'
  | 'spawnForm'
  | 'siteKind'
  | 'conditionMeasure'
  | 'recordOrigin';

export type ColumnHead = {
  readonly key: ColumnKey;
  readonly kind: 'text' | 'date' | 'moment' | 'number' | 'yesNo' | 'choice';
  readonly unit?: UcumUnit;
  readonly blank: Blank;
  readonly words?: ChoiceWords;
};

export type SavedColumn<R> = ColumnHead & { readonly cell: (row: R, language: Language) => Cell };

/** What an address asked for, as the list itself reads it. */
export type SavedQuery = Readonly<Record<string, unknown>>;

/** A table as a file takes it: the rows of a list under the same filter, all of them, in the list's order. */
export type SavedTable = {
  readonly columns: readonly ColumnHead[];
  readonly pages: (context: ReadContext, query: SavedQuery) => AsyncGenerator<readonly Cell[][]>;
};

/** Joins the columns of a table to the question that finds its rows, a page at a time. */
export function savedTable<R>(
  columns: readonly SavedColumn<R>[],
  read: (context: ReadContext, query: SavedQuery) => AsyncGenerator<readonly R[]>,
): SavedTable {
  return {
    columns: columns.map(({ cell: _cell, ...head }) => head),
    async *pages(context, query) {
      const { language } = context.actor;
      for await (const page of read(context, query))
        yield page.map((row) => columns.map(({ cell }) => cell(row, language)));
    },
  };
}
