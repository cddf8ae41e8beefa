/**
 * One term of the fixed part of a model. Values are given row by row, all terms with the same number of rows.
 *
 * - `factor`: treatment coding, the first level being the reference. `levels` gives the order and may name levels without
 *   data; without it the levels are those present, sorted.
 * - `covariate`: one column as it stands.
 * - `interaction`: products of the columns of earlier factors and covariates, all of which must be terms as well.
 */
export type FixedTerm =
  | {
      readonly kind: 'factor';
      readonly name: string;
      readonly values: readonly string[];
      readonly levels?: readonly string[];
    }
  | { readonly kind: 'covariate'; readonly name: string; readonly values: ArrayLike<number> }
  | { readonly kind: 'interaction'; readonly of: readonly string[] };

/** A random intercept for every level of a grouping factor: site, spawn lot, treatment run, batch. */
export type RandomTerm = {
  readonly name: string;
  readonly values: readonly string[];
  /** Order of the levels; may name levels without data. Default: those present, sorted. */
  readonly levels?: readonly string[];
};

/** Values of one new row by name, for predictions: factor levels and covariates. */
export type NewRow = Readonly<Record<string, string | number>>;
