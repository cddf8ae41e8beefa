import { ArgumentError } from '../../outcome';
import { codeLevels } from './code-levels';
import type { FixedTerm } from './fixed-term';

export type CodedFactor = {
  readonly name: string;
  readonly levels: readonly string[];
  readonly codes: Int32Array;
};
export type CodedCovariate = { readonly name: string; readonly values: Float64Array };

/** One column of the design: the product of factor indicators (level numbers) and covariates. No parts: the intercept. */
export type DesignColumn = {
  readonly name: string;
  readonly indicators: readonly { readonly factor: number; readonly level: number }[];
  readonly covariates: readonly number[];
};

/** The fixed part of a model in coded form: what its columns mean, and the data to fill them with. */
export type CodedFixed = {
  readonly rowCount: number;
  readonly factors: readonly CodedFactor[];
  readonly covariates: readonly CodedCovariate[];
  readonly columns: readonly DesignColumn[];
};

/**
 * Codes the fixed terms: an intercept, then each term's columns in order. A factor with k levels gives k - 1 columns
 * named factor + level (k for the first factor when there is no intercept); an interaction gives the products of its
 * parts' columns, the first part varying fastest, joined by ":".
 *
 * @throws ArgumentError for unequal lengths, a name used twice, numbers that are not finite, or an interaction whose
 *   parts are not themselves terms.
 */
export function codeFixed(terms: readonly FixedTerm[], rowCount: number, intercept: boolean): CodedFixed {
  const factors: CodedFactor[] = [];
  const covariates: CodedCovariate[] = [];
  const columnsOf = new Map<string, DesignColumn[]>();
  const columns: DesignColumn[] = intercept ? [{ name: '(Intercept)', indicators: [], covariates: [] }] : [];
  let needsAllLevels = !intercept;
  for (const term of terms) {
    let own: DesignColumn[];
    if (term.kind === 'interaction') {
      own = productColumns(term.of, columnsOf);
    } else {
      const argument = `fixed.${term.name}`;
      if (columnsOf.has(term.name)) throw new ArgumentError(argument, 'is the name of two terms');
      if (term.values.length !== rowCount) {
        throw new ArgumentError(`${argument}.values`, `has ${term.values.length} rows, not ${rowCount}`);
      }
      if (term.kind === 'factor') {
        const factor = factors.length;
        const { levels, codes } = codeLevels(argument, term.values, term.levels);
        factors.push({ name: term.name, levels, codes });
        const first = needsAllLevels ? 0 : 1;
        needsAllLevels = false;
        own = levels.slice(first).map((level, at) => ({
          name: `${term.name}${level}`,
          indicators: [{ factor, level: at + first }],
          covariates: [],
        }));
      } else {
        const values = Float64Array.from(term.values);
        if (!values.every(Number.isFinite)) {
          throw new ArgumentError(`${argument}.values`, 'must be finite numbers');
        }
        own = [{ name: term.name, indicators: [], covariates: [covariates.length] }];
        covariates.push({ name: term.name, values });
      }
      columnsOf.set(term.name, own);
    }
    columns.push(...own);
  }
  return { rowCount, factors, covariates, columns };
}

function productColumns(of: readonly string[], columnsOf: Map<string, DesignColumn[]>): DesignColumn[] {
  const parts = of.map((name) => {
    const part = columnsOf.get(name);
    if (!part) throw new ArgumentError('fixed.interaction', `"${name}" is not an earlier term`);
    return part;
  });
  const [first, ...rest] = parts;
  if (!first || rest.length === 0) throw new ArgumentError('fixed.interaction', 'needs two terms or more');
  return rest.reduce(
    (products, part) =>
      part.flatMap((right) =>
        products.map((left) => ({
          name: `${left.name}:${right.name}`,
          indicators: [...left.indicators, ...right.indicators],
          covariates: [...left.covariates, ...right.covariates],
        })),
      ),
    first,
  );
}
