import type { WriteContext } from '@/lib/access/context';
import type { FieldError, Question, Result } from '@/lib/base/result';
import type { ColumnUnit } from '@/lib/growing/record-table-layout';
import type { RowValues } from './read-row';

/** What stands against a row: something wrong, or something to be confirmed (`asks`). */
export type RowProblem = FieldError & { readonly asks?: true };

/** A row as it goes to be taken: what its cells say, and what was wrong with them already. */
export type RowToTake = {
  readonly line: number;
  readonly values: RowValues;
  readonly errors: readonly FieldError[];
  /** Questions answered with yes, for this row or for the whole table. */
  readonly confirmed: ReadonlySet<string>;
};

/** What became of a row: a new record, one that is there already, or one that needs a person. */
export type TakenRow =
  | { readonly kind: 'new'; readonly recordIds: readonly string[] }
  | { readonly kind: 'there'; readonly recordIds: readonly string[] }
  | { readonly kind: 'needs'; readonly problems: readonly RowProblem[] };

/** What holds for every row of a table. */
export type TakeSettings = {
  /** Site of rows that name none. */
  readonly siteId: string | null;
  /** BCP 47 tag whose decimal sign the numbers of the table have. */
  readonly region: string;
  /** Whether everything is taken back afterwards: what can be told without a write needs none. */
  readonly rehearsal: boolean;
  /** Records for which other rows of the table stand already, added or found there: no row of this run is one of them. */
  readonly usedUp: ReadonlySet<string>;
  /** How many rows of the table hold each text in the column of a field, as it is written; empty without the column. */
  readonly rowsByText: (field: string) => Promise<ReadonlyMap<string, number>>;
  /** What the rows say in the columns of some fields, each combination once; none where a field has no column. */
  readonly textsOf: (fields: readonly string[]) => Promise<readonly (readonly string[])[]>;
  /** The unit that the column of a field is written in. */
  readonly unitOf: (field: string) => ColumnUnit | null;
};

/** Writes rows as records, in the transaction it is given. Takes them in order; each sees those before it. */
export type Taker = {
  /** How many rows are taken between two looks at the clock. */
  readonly atOnce: number;
  readonly take: (context: WriteContext, rows: readonly RowToTake[]) => Promise<readonly TakenRow[]>;
};

/** The refusal of a command as what stands against its row. */
export function problemsOf(result: Exclude<Result<unknown>, { kind: 'ok' }>): readonly RowProblem[] {
  switch (result.kind) {
    case 'invalid':
      return result.errors;
    case 'confirm':
      return result.questions.map((question: Question) => ({ ...question, asks: true }));
    case 'not-found':
      return [{ field: '', code: 'not-found' }];
    case 'conflict':
      return [{ field: '', code: 'try-again' }];
  }
}

/** What the cells were refused for, and what the command's input says about the others. */
export function withCellErrors(
  cells: readonly FieldError[],
  parsed: readonly FieldError[],
): readonly FieldError[] {
  const named = new Set(cells.map(({ field }) => field));
  return [...cells, ...parsed.filter(({ field }) => !named.has(field))];
}
