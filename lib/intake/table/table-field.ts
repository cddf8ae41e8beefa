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

type AskedWhen = {
  /** Only where some column holds one of these fields, and of the rows that say one of them. */
  readonly with?: readonly string[];
  /** Not where a column holds this field. */
  readonly unless?: string;
  /** What of its list can hold for a whole table, where not all of it can. */
  readonly only?: readonly string[];
};

type Common = {
  /** Name of the field within its kind of table; words for it stand in the catalogue `import.fields`. */
  readonly name: string;
  /** Path of the command's input, by which its refusals name the field. */
  readonly target: string;
  /** Without a column or a value for it no row can be taken in; `orBy`: another field that can say it, too. */
  readonly needed?: true | { readonly orBy: string };
  /** Asked for the whole table where no column holds it. */
  readonly asked?: AskedWhen;
  /** Headings under which the column is known, in plain words. */
  readonly words: readonly string[];
  /** Beginnings of words that a heading of the column never has where only a part of it is known. */
  readonly never?: readonly string[];
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
        /** Words that say that there was none of it, such as "no" under "Mould?". */
        readonly none?: readonly string[];
        /** Words that say that there was, and not which, such as "yes"; read as `unsaid`. */
        readonly some?: readonly string[];
      }
  );

/** What a choice holds whose cell says that there is one and not which. */
export const unsaid = 'unsaid';
