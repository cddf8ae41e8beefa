import { type CannotCompute, cannotCompute } from '../../outcome';
import type { CoefficientMap } from '../design/coefficient-map';
import { allRows, type CodedTerms, checkRandomTerms, codeTerms, prepareRows } from '../design/prepare-terms';
import type { RowClasses } from '../design/row-classes';
import { RandomSystem } from '../random-system';
import { type CrossProducts, crossProducts } from './cross-products';
import { checkLinearInput, type LinearMixedInput } from './linear-input';

/** A linear mixed model with its data worked into cross-products, ready to be fitted again and again. */
export type LinearModel = {
  readonly kind: 'linear-model';
  readonly terms: CodedTerms;
  readonly classes: RowClasses;
  readonly map: CoefficientMap;
  readonly columns: readonly Float64Array[];
  readonly system: RandomSystem;
  /** Random levels, weights and responses (past the baseline) of the distinct rows. */
  readonly codes: readonly Int32Array[];
  readonly rowWeights: Float64Array;
  readonly rowResponse: Float64Array;
  readonly cross: CrossProducts;
  /** Least squares coefficients (working basis) already taken out of the response, which saves digits. */
  readonly baseline: Float64Array;
  readonly response: Float64Array;
  readonly offset: Float64Array | undefined;
  readonly weights: Float64Array;
};

/** Residual squares below this share of the response's own are rounding: every row is fitted exactly. */
const NOTHING_LEFT = 1e-20;

/**
 * Codes and checks the data and works out the cross-products.
 *
 * @throws ArgumentError for bad arguments. Returns a reason where the data are too thin for the model.
 */
export function prepareLinear(input: LinearMixedInput): LinearModel | CannotCompute {
  checkLinearInput(input);
  const n = input.response.length;
  const terms = codeTerms(n, input.fixed, input.random, input.intercept ?? true);
  if (n === 0) return cannotCompute('no-data', 'There is no row to fit a model to.');
  const thin = checkRandomTerms(terms);
  if (thin) return thin;
  const offset = input.offset ? Float64Array.from(input.offset) : undefined;
  const y = new Float64Array(n);
  for (let row = 0; row < n; row++) y[row] = (input.response[row] as number) - (offset?.[row] ?? 0);
  const priorWeights = input.weights ? Float64Array.from(input.weights) : new Float64Array(n).fill(1);
  const { classes, columns, map, codes } = prepareRows(terms, allRows(n), []);
  if (n <= columns.length) {
    return cannotCompute(
      'too-few-observations',
      `${n} observations are too few for ${columns.length} fixed coefficients and a residual variance.`,
    );
  }
  for (const { name, levels, codes: own } of terms.random) {
    if (!input.weights && levels.length >= n && new Set(own).size === n) {
      return cannotCompute(
        'not-identifiable',
        `Every row is its own level of "${name}", which cannot be told apart from the residual.`,
      );
    }
  }
  const { weights, means, within } = aggregate(classes, y, priorWeights);
  const baseline = Float64Array.from(columns, () => 0);
  const residual = Float64Array.from(means);
  for (const [k, column] of columns.entries()) {
    let part = 0;
    for (let i = 0; i < residual.length; i++) part += (column[i] as number) * (residual[i] as number);
    baseline[k] = part;
    for (let i = 0; i < residual.length; i++) {
      residual[i] = (residual[i] as number) - part * (column[i] as number);
    }
  }
  const system = new RandomSystem(
    codes,
    terms.random.map(({ levels }) => levels.length),
    classes.count,
  );
  system.setWeights(weights);
  let weightConstant = 0;
  if (input.weights) for (const weight of priorWeights) weightConstant -= Math.log(weight);
  const cross = crossProducts(system, columns, residual, weights, {
    observations: n,
    weightConstant,
    withinSquares: within,
  });
  let total = 0;
  for (let row = 0; row < n; row++) total += (priorWeights[row] as number) * (y[row] as number) ** 2;
  if (!(cross.yy + within > NOTHING_LEFT * total)) {
    return cannotCompute('no-variation', 'The response does not vary beyond what the fixed part explains.');
  }
  return {
    kind: 'linear-model',
    terms,
    classes,
    map,
    columns,
    system,
    codes,
    rowWeights: weights,
    rowResponse: residual,
    cross,
    baseline,
    response: y,
    offset,
    weights: priorWeights,
  };
}

/** Weighted mean of each class of rows, its total weight, and the squares left within classes. */
function aggregate(classes: RowClasses, y: Float64Array, rowWeights: Float64Array) {
  const weights = new Float64Array(classes.count);
  const means = new Float64Array(classes.count);
  for (let row = 0; row < y.length; row++) {
    const own = classes.classOf[row] as number;
    const weight = rowWeights[row] as number;
    const sum = (weights[own] as number) + weight;
    weights[own] = sum;
    means[own] = (means[own] as number) + (((y[row] as number) - (means[own] as number)) * weight) / sum;
  }
  let within = 0;
  for (let row = 0; row < y.length; row++) {
    const distance = (y[row] as number) - (means[classes.classOf[row] as number] as number);
    within += (rowWeights[row] as number) * distance ** 2;
  }
  return { weights, means, within };
}
