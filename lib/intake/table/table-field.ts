/** What a cell may point to: records that are there already. */
export type ReferenceKind =
  | 'batch'
  | 'site'
  | 'species'
  | 'substrate_lot'
  | 'spawn_lot'
  | 'material'
  | 'method'
  | 'treatment';

type Common = {
  /** Name of the field within its kind of table; words for it stand in the catalogue `import.fields`. */
  readonly name: string;
  /** Path of the command's input, by which its refusals name the field. */
  readonly target: string;
  /** Without a column or a value for it no row can be taken in; `orBy`: another field that can say it, too. */
  readonly needed?: true | { readonly orBy: string };
  /** Headings under which the column is known, in plain words. */
  readonly words: readonly string[];
};

/** One thing that a column of a table can hold. */
export type TableField = Common &
  (
    | { readonly cell: 'date' | 'moment' | 'text' | 'count' | 'percent' | 'number' }
    | { readonly cell: 'mass' | 'length' | 'area' | 'volume' | 'temperature' | 'duration' }
    /** `references`: any number of them in one cell, between commas, semicolons or other signs. */
    | { readonly cell: 'reference' | 'references'; readonly of: ReferenceKind }
    | {
        readonly cell: 'choice';
        /** Each value with the words it is written in, English and Spanish; the value itself always counts. */
        readonly options: Readonly<Record<string, readonly string[]>>;
      }
  );
