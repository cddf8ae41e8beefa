import { ArgumentError, type CannotCompute, cannotCompute } from '../../outcome';
import { type CodedFixed, codeFixed } from './code-fixed';
import { codeLevels } from './code-levels';
import type { CoefficientMap } from './coefficient-map';
import { designColumns } from './design-columns';
import type { FixedTerm, RandomTerm } from './fixed-term';
import { orthonormalBasis } from './orthonormal-basis';
import { type RowClasses, rowClasses } from './row-classes';

export type CodedRandom = {
  readonly name: string;
  readonly levels: readonly string[];
  /** Level of every original row. */
  readonly codes: Int32Array;
};

/** The coded terms of a model, before any rows are put together. */
export type CodedTerms = {
  readonly rowCount: number;
  readonly fixed: CodedFixed;
  readonly random: readonly CodedRandom[];
};

/** The distinct rows of a model, ready for its equations. */
export type PreparedRows = {
  readonly classes: RowClasses;
  /** Fixed columns over the distinct rows, in the orthonormal working basis. */
  readonly columns: readonly Float64Array[];
  readonly map: CoefficientMap;
  /** Random levels over the distinct rows, by term. */
  readonly codes: readonly Int32Array[];
};

/**
 * Codes all terms.
 *
 * @throws ArgumentError for terms of unequal length or a random term's name used twice.
 */
export function codeTerms(
  rowCount: number,
  fixed: readonly FixedTerm[],
  random: readonly RandomTerm[],
  intercept: boolean,
): CodedTerms {
  const names = new Set<string>();
  const coded = random.map((term) => {
    const argument = `random.${term.name}`;
    if (names.has(term.name)) throw new ArgumentError(argument, 'is the name of two terms');
    names.add(term.name);
    if (term.values.length !== rowCount) {
      throw new ArgumentError(`${argument}.values`, `has ${term.values.length} rows, not ${rowCount}`);
    }
    return { name: term.name, ...codeLevels(argument, term.values, term.levels) };
  });
  return { rowCount, fixed: codeFixed(fixed, rowCount, intercept), random: coded };
}

/** A random term needs two levels with data at least, or there is no variance between levels to estimate. */
export function checkRandomTerms(terms: CodedTerms): CannotCompute | undefined {
  for (const { name, codes } of terms.random) {
    const first = codes[0];
    if (codes.every((code) => code === first)) {
      return cannotCompute(
        'too-few-clusters',
        `All data belong to one level of "${name}", so the variation between its levels cannot be estimated.`,
      );
    }
  }
  return undefined;
}

/**
 * Puts identical rows together and builds the working basis.
 *
 * @param rows the original rows to use.
 * @param extraKeys further values (offsets) in which rows put together must agree, over all original rows.
 */
export function prepareRows(
  terms: CodedTerms,
  rows: Int32Array,
  extraKeys: readonly ArrayLike<number>[],
): PreparedRows {
  const pick = (codes: Int32Array) =>
    rows.length === codes.length ? codes : rows.map((row) => codes[row] as number);
  const pickNumbers = (values: ArrayLike<number>) =>
    rows.length === values.length ? values : Float64Array.from(rows, (row) => values[row] as number);
  const random = terms.random.map(({ codes }) => pick(codes));
  const classes = rowClasses(
    [
      ...[...random].reverse(),
      ...terms.fixed.factors.map(({ codes }) => pick(codes)),
      ...terms.fixed.covariates.map(({ values }) => pickNumbers(values)),
      ...extraKeys.map(pickNumbers),
    ],
    rows.length,
  );
  const representative = classes.representative.map((at) => rows[at] as number);
  const basis = orthonormalBasis(designColumns(terms.fixed, representative));
  return {
    classes,
    columns: basis.columns,
    map: { basis },
    codes: terms.random.map(({ codes }) => representative.map((row) => codes[row] as number)),
  };
}

/** 0 .. count - 1. */
export function allRows(count: number): Int32Array {
  const rows = new Int32Array(count);
  for (let row = 0; row < count; row++) rows[row] = row;
  return rows;
}
