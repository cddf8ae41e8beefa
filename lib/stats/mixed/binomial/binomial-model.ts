import { logBinomialCoefficient } from '../../distribution/binomial';
import { type CannotCompute, cannotCompute } from '../../outcome';
import type { CoefficientMap } from '../design/coefficient-map';
import { allRows, type CodedTerms, checkRandomTerms, codeTerms, prepareRows } from '../design/prepare-terms';
import type { RowClasses } from '../design/row-classes';
import { RandomSystem } from '../random-system';
import { type BinomialMixedInput, checkBinomialInput } from './binomial-input';
import { type LogisticRegression, logisticRegression } from './logistic-regression';
import type { BinomialRows } from './logistic-rows';
import { separatedRows } from './separation';

/** A binomial mixed model with its data put together by distinct rows, ready to be fitted. */
export type BinomialModel = {
  readonly kind: 'binomial-model';
  readonly terms: CodedTerms;
  readonly map: CoefficientMap;
  readonly columns: readonly Float64Array[];
  readonly rows: BinomialRows;
  /** Random levels of the distinct rows, by term. */
  readonly codes: readonly Int32Array[];
  /** Original rows in use (rows of a separated level are not: the likelihood tends to 1 there whatever the rest). */
  readonly used: Int32Array;
  /** Classes of the rows in use. */
  readonly classes: RowClasses;
  readonly separated: boolean;
  readonly system: RandomSystem;
  /** The fit without random effects, where the search starts. */
  readonly regression: LogisticRegression;
  /** -2 sum of log binomial coefficients of all original rows. */
  readonly constant: number;
  readonly observations: number;
  readonly quadraturePoints: number;
};

/**
 * Codes and checks the data, finds separation, and puts identical rows together.
 *
 * @throws ArgumentError for bad arguments. Returns a reason where the data are too thin for the model.
 */
export function prepareBinomial(input: BinomialMixedInput): BinomialModel | CannotCompute {
  checkBinomialInput(input);
  const n = input.events.length;
  const terms = codeTerms(n, input.fixed, input.random, input.intercept ?? true);
  if (n === 0) return cannotCompute('no-data', 'There is no row to fit a model to.');
  const thin = checkRandomTerms(terms) ?? checkBinaryRows(terms, input.trials);
  if (thin) return thin;
  let constant = 0;
  for (let row = 0; row < n; row++) {
    constant -= 2 * logBinomialCoefficient(input.trials[row] as number, input.events[row] as number);
  }
  let used = allRows(n);
  for (let separated = false; ; separated = true) {
    const { classes, columns, map, codes } = prepareRows(terms, used, input.offset ? [input.offset] : []);
    const rows = aggregate(classes, used, input);
    const regression = logisticRegression(columns, rows);
    const away = separatedRows(columns, rows, regression);
    if (!away) {
      const system = new RandomSystem(
        codes,
        terms.random.map(({ levels }) => levels.length),
        classes.count,
      );
      return {
        kind: 'binomial-model',
        terms,
        map,
        columns,
        rows,
        codes,
        used,
        classes,
        separated,
        system,
        regression,
        constant,
        observations: n,
        quadraturePoints: input.quadraturePoints ?? 1,
      };
    }
    used = used.filter((_, at) => away[classes.classOf[at] as number] === 0);
    if (used.length === 0) {
      return cannotCompute(
        'separation',
        'Every group compared has either no event at all or nothing but events, so no rate can be estimated.',
      );
    }
  }
}

/** A level for every row says nothing when each row is a single yes or no. */
function checkBinaryRows(terms: CodedTerms, trials: ArrayLike<number>): CannotCompute | undefined {
  for (let row = 0; row < terms.rowCount; row++) if (trials[row] !== 1) return undefined;
  const term = terms.random.find(
    ({ levels, codes }) => levels.length >= terms.rowCount && new Set(codes).size === terms.rowCount,
  );
  if (!term) return undefined;
  return cannotCompute(
    'not-identifiable',
    `Every row is its own level of "${term.name}" and has one unit, so variation between levels cannot be seen.`,
  );
}

function aggregate(classes: RowClasses, used: Int32Array, input: BinomialMixedInput): BinomialRows {
  const events = new Float64Array(classes.count);
  const trials = new Float64Array(classes.count);
  const offset = new Float64Array(classes.count);
  for (let at = 0; at < used.length; at++) {
    const own = classes.classOf[at] as number;
    const row = used[at] as number;
    events[own] = (events[own] as number) + (input.events[row] as number);
    trials[own] = (trials[own] as number) + (input.trials[row] as number);
    offset[own] = input.offset ? (input.offset[row] as number) : 0;
  }
  return { events, trials, offset };
}
