import { type CannotCompute, cannotCompute } from '../../outcome';
import { type Coefficient, coefficientsOf, type FixedEstimates } from '../coefficients';
import { accuracyFor, COSTLY_TAIL } from '../costly-tail';
import { logDeterminantOfBasis } from '../design/coefficient-map';
import { type FitStart, startingTheta } from '../fit-start';
import { inverseOfFactor } from '../linear-algebra/small-matrix';
import { bestFrom, bestTheta } from '../optimise/best-theta';
import { partOfRows, pick } from '../part-of-rows';
import { type RandomEffects, randomEffects } from '../random-effects';
import { RandomSystem } from '../random-system';
import { crossProducts } from './cross-products';
import { fittedRows } from './fitted-rows';
import type { LinearMixedInput } from './linear-input';
import { type LinearModel, prepareLinear } from './linear-model';
import { ProfiledCriterion } from './profiled-criterion';

export type VarianceComponent = {
  readonly term: string;
  readonly levels: number;
  readonly standardDeviation: number;
  readonly variance: number;
};

/** A fitted linear mixed model. */
export type LinearMixedFit = {
  readonly kind: 'estimate';
  readonly method: 'linear mixed model, REML' | 'linear mixed model, ML';
  readonly restricted: boolean;
  readonly observations: number;
  readonly coefficients: readonly Coefficient[];
  readonly fixed: FixedEstimates;
  readonly varianceComponents: readonly VarianceComponent[];
  /** Residual standard deviation sigma (of a row of weight 1). */
  readonly residualStandardDeviation: number;
  /** Standard deviation of each random term over sigma. */
  readonly theta: Float64Array;
  /** Terms whose variance is estimated at exactly 0 (the boundary). */
  readonly zeroVarianceTerms: readonly string[];
  /** -2 log-likelihood; restricted under REML, where it only compares models with the same fixed part. */
  readonly minusTwoLogLikelihood: number;
  /** Fixed coefficients, variances and the residual variance. */
  readonly parameters: number;
  readonly aic: number;
  readonly bic: number;
  readonly randomEffects: readonly RandomEffects[];
  /** Fitted value (fixed part, random effects and offset) of every row. */
  readonly fitted: Float64Array;
  /** Weighted sum of squared residuals about `fitted`. */
  readonly residualSquares: number;
  readonly evaluations: number;
  readonly model: LinearModel;
};

/** Every term as varied as the residual. */
const USUAL = 1;
/** A start below this is too near the stationary point at 0. */
const NOT_ZERO = 0.05;

/** Fits a linear mixed model. See `LinearMixedInput` and `LinearMixedFit`. */
export function fitLinearMixed(input: LinearMixedInput): LinearMixedFit | CannotCompute {
  const model = prepareLinear(input);
  return model.kind === 'cannot-compute' ? model : fitLinearModel(model, input.method ?? 'REML', input.start);
}

/** Fits a prepared model; cheap to call twice with the two methods. */
export function fitLinearModel(
  model: LinearModel,
  method: 'REML' | 'ML',
  start?: FitStart,
): LinearMixedFit | CannotCompute {
  const restricted = method === 'REML';
  const { system, cross, map, terms } = model;
  const q = system.termCount;
  const criterion = new ProfiledCriterion(system, cross, restricted);
  const names = terms.random.map(({ name }) => name);
  const minimum = bestFrom(
    criterion,
    start && startingTheta(start, names, start.residual ?? 1, USUAL),
    () => startOf(model, restricted),
    q,
    accuracyFor(system),
  );
  const solution = criterion.solution;
  if (!solution || !Number.isFinite(minimum.value)) {
    return cannotCompute(
      'no-variation',
      'The model explains every row exactly; no residual is left to judge by.',
    );
  }
  if (!minimum.converged) {
    return cannotCompute('did-not-converge', 'The likelihood has no clear maximum for these data.');
  }
  const theta = minimum.x;
  const sigma2 = solution.squares / criterion.degrees;
  const sigma = Math.sqrt(sigma2);
  const p = cross.p;
  const fixed = {
    map,
    working: solution.b.map((value, k) => value + (model.baseline[k] as number)),
    workingCovariance: inverseOfFactor(solution.fixedFactor, p).map((value) => value * sigma2),
  };
  const rows = fittedRows(model, solution.b, solution.u);
  const parameters = p + q + 1;
  const minusTwoLogLikelihood = minimum.value + (restricted ? 2 * logDeterminantOfBasis(map) : 0);
  return {
    kind: 'estimate',
    method: restricted ? 'linear mixed model, REML' : 'linear mixed model, ML',
    restricted,
    observations: cross.observations,
    coefficients: coefficientsOf(
      fixed,
      terms.fixed.columns.map(({ name }) => name),
    ),
    fixed,
    varianceComponents: terms.random.map(({ name, levels }, k) => ({
      term: name,
      levels: levels.length,
      standardDeviation: (theta[k] as number) * sigma,
      variance: (theta[k] as number) ** 2 * sigma2,
    })),
    residualStandardDeviation: sigma,
    theta,
    zeroVarianceTerms: terms.random.filter((_, k) => theta[k] === 0).map(({ name }) => name),
    minusTwoLogLikelihood,
    parameters,
    aic: minusTwoLogLikelihood + 2 * parameters,
    bic: minusTwoLogLikelihood + Math.log(cross.observations) * parameters,
    randomEffects: randomEffects(system, terms.random, solution, sigma2),
    fitted: rows.fitted,
    residualSquares: rows.residualSquares,
    evaluations: minimum.evaluations,
    model,
  };
}

/** The search starts from variances all alike; where it is costly, from a fit to part of the data. */
function startOf(model: LinearModel, restricted: boolean): Float64Array {
  const { system, codes, columns, rowResponse, rowWeights, cross } = model;
  const start = new Float64Array(system.termCount).fill(USUAL);
  if (system.plan.tailSize <= COSTLY_TAIL) return start;
  const rows = partOfRows(system, codes);
  const part = new RandomSystem(
    codes.map((own) => rows.map((row) => own[row] as number)),
    system.levelCounts,
    rows.length,
  );
  const weights = pick(rowWeights, rows);
  part.setWeights(weights);
  const share = rows.length / system.rowCount;
  const products = crossProducts(
    part,
    columns.map((column) => pick(column, rows)),
    pick(rowResponse, rows),
    weights,
    {
      observations: Math.round(cross.observations * share),
      weightConstant: 0,
      withinSquares: cross.withinSquares * share,
    },
  );
  const found = bestTheta(new ProfiledCriterion(part, products, restricted), start, system.termCount, {
    tolerance: 1e-4,
  });
  return found.converged ? found.x.map((value) => Math.max(value, NOT_ZERO)) : start;
}
