import { type CannotCompute, cannotCompute } from '../../outcome';
import { type Coefficient, coefficientsOf, type FixedEstimates, notEstimable } from '../coefficients';
import { accuracyFor, COSTLY_TAIL, MANY_ROWS } from '../costly-tail';
import { workingCoefficients } from '../design/coefficient-map';
import { type FitStart, startingCoefficients, startingTheta } from '../fit-start';
import { choleskyOf, inverseOfFactor } from '../linear-algebra/small-matrix';
import { bestFrom, bestTheta } from '../optimise/best-theta';
import { type RandomEffects, randomEffects } from '../random-effects';
import type { BinomialMixedInput } from './binomial-input';
import { type BinomialModel, prepareBinomial } from './binomial-model';
import { covarianceOfFit } from './covariance-of-fit';
import { fittedProbabilities } from './fitted-probabilities';
import { jointHessian } from './joint-hessian';
import { LaplaceCriterion } from './laplace-criterion';
import { borderColumn } from './laplace-curvature';
import { partialBinomial } from './partial-binomial';
import { probeGradients } from './probe-gradient';
import { QuadratureCriterion } from './quadrature-criterion';

/** A fitted binomial mixed model. Everything linear is on the logit scale. */
export type BinomialMixedFit = {
  readonly kind: 'estimate';
  readonly method: string;
  readonly observations: number;
  readonly coefficients: readonly Coefficient[];
  /** Covariance from the joint Hessian in (theta, beta), so that standard errors count the uncertainty of the variances. */
  readonly fixed: FixedEstimates;
  /** The same with the variances taken as known. */
  readonly fixedGivenTheta: FixedEstimates;
  readonly varianceComponents: readonly {
    readonly term: string;
    readonly levels: number;
    readonly standardDeviation: number;
    readonly variance: number;
  }[];
  /** Standard deviation of each random term. */
  readonly theta: Float64Array;
  /** Standard error of each, from the joint Hessian; undefined where it is 0. */
  readonly deviationErrors: readonly (number | undefined)[];
  /** Terms whose variance is estimated at exactly 0 (the boundary). */
  readonly zeroVarianceTerms: readonly string[];
  /**
   * Terms that vary and have fewer than 8 levels with data. Normal limits of differences and profile limits of standard deviations
   * are then too narrow (88 rather than 95 in 100 hold with 4 sites, see CALIBRATION.md), which must be said beside them.
   */
  readonly fewLevels: readonly string[];
  /** Coefficients that run off to infinity because some level has no events or nothing but events. */
  readonly separated: readonly string[];
  /** With binomial coefficients. */
  readonly minusTwoLogLikelihood: number;
  readonly parameters: number;
  readonly aic: number;
  readonly bic: number;
  readonly randomEffects: readonly RandomEffects[];
  /** Fitted probability of every row, random effects included. */
  readonly fitted: Float64Array;
  readonly evaluations: number;
  readonly model: BinomialModel;
};

/** Where the search for the standard deviations starts: middling variation, well away from 0. */
const START = 0.6;
/** Levels from which on the normal limits hold about what they say. */
const ENOUGH_LEVELS = 8;
/** A start below this is too near the stationary point at 0. */
const NOT_ZERO = 0.05;

/** Fits a binomial mixed model. See `BinomialMixedInput` and `BinomialMixedFit`. */
export function fitBinomialMixed(input: BinomialMixedInput): BinomialMixedFit | CannotCompute {
  const model = prepareBinomial(input);
  return model.kind === 'cannot-compute' ? model : fitBinomialModel(model, input.start);
}

/** Fits a prepared model. */
export function fitBinomialModel(model: BinomialModel, start?: FitStart): BinomialMixedFit | CannotCompute {
  const { system, map, terms, columns } = model;
  const q = system.termCount;
  const p = columns.length;
  const criterion = model.quadraturePoints > 1 ? new QuadratureCriterion(model) : new LaplaceCriterion(model);
  const laplace = criterion instanceof QuadratureCriterion ? criterion.laplace : criterion;
  const costly = system.plan.tailSize > COSTLY_TAIL;
  const minimum = bestFrom(
    criterion,
    start && givenStart(model, start),
    () => startOf(model),
    q,
    accuracyFor(system),
  );
  if (!Number.isFinite(minimum.value) || !minimum.converged) {
    return cannotCompute('did-not-converge', 'The likelihood has no clear maximum for these data.');
  }
  const theta = minimum.x.slice(0, q);
  const free = Array.from(minimum.x.keys()).filter((i) => i >= q || theta[i] !== 0);
  const b = minimum.x.slice(q);
  laplace.value(minimum.x);
  const given = givenTheta(laplace.derivatives().curvature, q, p);
  const gradientOf =
    costly && criterion === laplace
      ? probeGradients(laplace)
      : (x: Float64Array) => {
          criterion.value(x);
          return criterion.gradient();
        };
  const effects = given && randomEffectsAt(laplace, minimum.x, given.factor);
  const fitted = fittedProbabilities(model, b, laplace.u);
  const hessian = jointHessian(gradientOf, minimum.x, minimum.curvature, free, system.rowCount > MANY_ROWS);
  const covariance = covarianceOfFit(hessian, free, q, p);
  if (!given || !effects || !covariance) {
    return cannotCompute(
      'did-not-converge',
      'The likelihood is too flat at its maximum to judge its precision.',
    );
  }
  const fixed: FixedEstimates = { map, working: b, workingCovariance: covariance.fixed };
  const names = terms.fixed.columns.map(({ name }) => name);
  const coefficients = coefficientsOf(fixed, names, model.separated ? separatedReason : notEstimable);
  const parameters = p + q;
  return {
    kind: 'estimate',
    method:
      model.quadraturePoints > 1
        ? `binomial mixed model, adaptive Gauss-Hermite with ${model.quadraturePoints} points`
        : q > 0
          ? 'binomial mixed model, Laplace'
          : 'logistic regression',
    observations: model.observations,
    coefficients,
    fixed,
    fixedGivenTheta: { ...fixed, workingCovariance: given.covariance },
    varianceComponents: terms.random.map(({ name, levels }, k) => ({
      term: name,
      levels: levels.length,
      standardDeviation: theta[k] as number,
      variance: (theta[k] as number) ** 2,
    })),
    theta,
    deviationErrors: covariance.deviationErrors,
    zeroVarianceTerms: terms.random.filter((_, k) => theta[k] === 0).map(({ name }) => name),
    fewLevels: terms.random
      .filter(({ codes }, k) => theta[k] !== 0 && new Set(codes).size < ENOUGH_LEVELS)
      .map(({ name }) => name),
    separated: model.separated
      ? coefficients.filter(({ estimate }) => typeof estimate !== 'number').map(({ name }) => name)
      : [],
    minusTwoLogLikelihood: minimum.value,
    parameters,
    aic: minimum.value + 2 * parameters,
    bic: minimum.value + Math.log(model.observations) * parameters,
    randomEffects: effects,
    fitted,
    evaluations: minimum.evaluations,
    model,
  };
}

export function separatedReason(name: string): CannotCompute {
  return cannotCompute(
    'separation',
    `"${name}" cannot be estimated: a group has no events at all, or nothing but events, so its rate has no finite logit.`,
  );
}

/** The point that a start names; undefined when it makes no sense. Coefficients it does not know are the regression's. */
function givenStart({ terms, map, regression }: BinomialModel, start: FitStart): Float64Array | undefined {
  const theta = startingTheta(
    start,
    terms.random.map(({ name }) => name),
    1,
    START,
  );
  const kept = map.basis.kept.map((column) => terms.fixed.columns[column]?.name ?? '');
  const beta = startingCoefficients(start, kept);
  return theta && Float64Array.of(...theta, ...(beta ? workingCoefficients(map, beta) : regression.b));
}

/** The search starts from a regression without random effects; where it is costly, from a fit to part of the data. */
function startOf(model: BinomialModel): Float64Array {
  const q = model.system.termCount;
  const part = model.system.plan.tailSize > COSTLY_TAIL ? partialBinomial(model) : undefined;
  const start = Float64Array.of(...new Float64Array(q).fill(START), ...model.regression.b);
  if (!part) return start;
  const found = bestTheta(new LaplaceCriterion(part), start, q, { tolerance: 1e-4 });
  if (!found.converged) return start;
  return found.x.map((value, i) => (i < q ? Math.max(value, NOT_ZERO) : value));
}

function randomEffectsAt(
  laplace: LaplaceCriterion,
  x: Float64Array,
  fixedFactor: Float64Array,
): RandomEffects[] {
  laplace.value(x);
  const { system, terms, columns } = laplace.model;
  const border = columns.map((column) => borderColumn(laplace, column));
  return randomEffects(system, terms.random, { u: laplace.u, border, fixedFactor }, 1);
}

/** Inverse of X'V^-1 X at the modes, V for the working response. */
function givenTheta(curvature: Float64Array, q: number, p: number) {
  const size = q + p;
  const information = new Float64Array(p * p);
  for (let i = 0; i < p; i++) {
    for (let j = 0; j < p; j++) information[i * p + j] = (curvature[(q + i) * size + q + j] as number) / 2;
  }
  const factor = choleskyOf(information, p);
  return factor && { factor, covariance: inverseOfFactor(factor, p) };
}
