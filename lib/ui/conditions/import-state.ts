import type { FieldSpec, FormState } from '../form/field-spec';

/** A table that was looked at and not yet taken in: how it is written, its first lines, and what would be added. */
export type LookedAt = {
  readonly text: string;
  readonly fields: readonly FieldSpec[];
  readonly values: FormState['values'];
  readonly columns: readonly { readonly key: string; readonly name: string }[];
  /** The first lines: the cell of each column by its key. */
  readonly rows: readonly { readonly key: string; readonly cells: Readonly<Record<string, string>> }[];
  /** What is in it, in a sentence or two. */
  readonly found: readonly string[];
  /** Lines that cannot be read, in words; empty when it can be taken in. */
  readonly problems: readonly string[];
};

export type ImportState = {
  readonly errors: FormState['errors'];
  readonly table: LookedAt | null;
};

export const emptyImport: ImportState = { errors: [], table: null };
