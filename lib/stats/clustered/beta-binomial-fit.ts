import { requireFinite } from '../check-argument';
import { proportion } from '../distribution/beta-log-odds';
import { chiSquareSurvival } from '../distribution/chi-square';
import { elementAt } from '../element-at';
import { ArgumentError, type CannotCompute, cannotCompute } from '../outcome';
import { type BetaBinomialData, betaBinomialSurface } from './beta-binomial-surface';
import { type ClusteredRows, clusterCounts } from './cluster-counts';
import { type NewtonMaximum, newtonMaximum } from './newton-maximum';

export type BetaBinomialFit = {
  readonly kind: 'estimate';
  /** Logit of the proportion, one coefficient per column of the design. */
  readonly coefficients: readonly number[];
  /** From the observed information. */
  readonly standardErrors: readonly number[];
  /** Intra-cluster correlation, 0 when the likelihood is highest without any, 1 when no cluster is mixed. */
  readonly rho: number;
  /** Whether the maximum is at rho = 0, where the fit is the binomial one. */
  readonly boundary: boolean;
  /** logit rho with its standard error; a reason at rho = 0 and at rho = 1. */
  readonly logitRho: { readonly estimate: number; readonly standardError: number } | CannotCompute;
  /** With binomial coefficients. */
  readonly logLikelihood: number;
  readonly binomialLogLikelihood: number;
  /** Likelihood-ratio test of rho = 0, its p-value half that of chi-square(1), as rho = 0 is a boundary. */
  readonly likelihoodRatio: number;
  readonly pValue: number;
  readonly method: string;
  readonly clusters: number;
};

/** A logit this far out is a fitted proportion of 0 or 1. */
const SEPARATED = 25;
/** The likelihood takes one step per unit; no batch, run or site comes near this size. */
const MOST_UNITS = 1_000_000;
/** logit rho below this is rho = 0 to every digit shown. */
const LEAST_LOGIT_RHO = -14;

const NO_CORRELATION = cannotCompute(
  'no-variation',
  'Groups differ no more than chance alone would make them.',
);
const ALL_OR_NOTHING = cannotCompute(
  'separation',
  'Within every group all units had the same outcome, so the correlation is at its limit of 1.',
);

/**
 * The beta-binomial model by maximum likelihood: events of cluster i are binomial with a probability from a beta
 * distribution of mean mu_i, logit mu_i = design_i * coefficients, and intra-cluster correlation rho.
 *
 * Newton's method from several starts with analytic derivatives; the maximum is compared with rho = 0. The boundary
 * fit's standard errors are the binomial ones. No units, one cluster, clusters of one unit only, or the same outcome
 * throughout (in a group of the design): a reason. A design whose columns are not independent: a reason.
 * Source: Williams (1975), Biometrics 31:949-952; Self & Liang (1987) for the test (citations from memory).
 *
 * @param design one row of covariates per row of counts, with a column of ones where an intercept is meant; default
 *   just an intercept. With `cluster` labels, rows of one cluster must have the same covariates.
 * @throws ArgumentError as clusterCounts, for more than a million units in a cluster, for a ragged design, or one that is
 *   not finite or differs within a cluster.
 */
export function betaBinomialFit(
  rows: ClusteredRows & { readonly design?: readonly (readonly number[])[] },
): BetaBinomialFit | CannotCompute {
  const { clusters } = clusterCounts(rows);
  for (const { label, trials } of clusters) {
    if (trials > MOST_UNITS) {
      throw new ArgumentError('trials', `at most ${MOST_UNITS} units to a cluster, not ${trials} (${label})`);
    }
  }
  const design = rows.design ?? rows.events.map(() => [1]);
  const covariates = covariatesByCluster(rows, design);
  if (clusters.length === 0) return cannotCompute('no-data', 'There are no units to fit a model to.');
  if (clusters.length === 1) {
    return cannotCompute(
      'too-few-clusters',
      'All the units come from one independent group, so how much groups differ cannot be told.',
    );
  }
  if (clusters.every((cluster) => cluster.trials === 1)) {
    return cannotCompute(
      'not-identifiable',
      'Groups of one unit cannot show how alike units of a group are.',
    );
  }
  const data = {
    events: clusters.map((cluster) => cluster.events),
    trials: clusters.map((cluster) => cluster.trials),
    design: clusters.map((cluster) => covariates.get(cluster.label) ?? []),
  };
  const size = data.design[0]?.length ?? 0;
  const binomial = newtonMaximum(betaBinomialSurface(data, false), new Float64Array(size));
  if (separated(data.design, binomial.at)) {
    return cannotCompute(
      'separation',
      'A group in which every unit had the same outcome has no finite logit.',
    );
  }
  if (binomial.covariance === undefined) {
    return cannotCompute('not-identifiable', 'The columns of the design are not independent of each other.');
  }
  const allOrNothing = clusters.every(({ events, trials }) => events === 0 || events === trials);
  const best = allOrNothing ? clustersAsUnits(data) : highestInside(data, binomial);
  const boundary =
    !allOrNothing && (elementAt(best.at, size) < LEAST_LOGIT_RHO || best.value <= binomial.value);
  if (!boundary && best.covariance === undefined) {
    return cannotCompute(
      'did-not-converge',
      'The likelihood is too flat to be maximised with these few groups.',
    );
  }
  const fit = boundary ? binomial : best;
  const ratio = boundary ? 0 : 2 * (best.value - binomial.value);
  return {
    kind: 'estimate',
    coefficients: [...fit.at.slice(0, size)],
    standardErrors: standardErrors(fit).slice(0, size),
    rho: boundary ? 0 : allOrNothing ? 1 : proportion(elementAt(fit.at, size)),
    boundary,
    logitRho: boundary ? NO_CORRELATION : allOrNothing ? ALL_OR_NOTHING : logitRhoOf(fit, size),
    logLikelihood: fit.value,
    binomialLogLikelihood: binomial.value,
    likelihoodRatio: ratio,
    pValue: boundary ? 1 : 0.5 * chiSquareSurvival(ratio, 1),
    method: 'beta-binomial, maximum likelihood',
    clusters: clusters.length,
  };
}

function highestInside(data: BetaBinomialData, { at }: NewtonMaximum): NewtonMaximum {
  const surface = betaBinomialSurface(data, true);
  return [-4, -2, 0]
    .map((start) => newtonMaximum(surface, Float64Array.from([...at, start])))
    .reduce((one, two) => (two.value > one.value ? two : one));
}

/** The limit rho = 1, which the likelihood climbs to when no cluster is mixed: each cluster counts as one unit. */
function clustersAsUnits({ events, design }: BetaBinomialData): NewtonMaximum {
  const one = { events: events.map((count) => (count > 0 ? 1 : 0)), trials: events.map(() => 1), design };
  return newtonMaximum(betaBinomialSurface(one, false), new Float64Array(design[0]?.length ?? 0));
}

function logitRhoOf(fit: NewtonMaximum, place: number): BetaBinomialFit['logitRho'] {
  return { estimate: elementAt(fit.at, place), standardError: elementAt(standardErrors(fit), place) };
}

function covariatesByCluster(
  rows: ClusteredRows,
  design: readonly (readonly number[])[],
): Map<string, readonly number[]> {
  if (design.length !== rows.events.length) {
    throw new ArgumentError('design', `has ${design.length} rows, events ${rows.events.length}`);
  }
  const width = design[0]?.length ?? 0;
  const byCluster = new Map<string, readonly number[]>();
  design.forEach((covariates, row) => {
    if (covariates.length !== width)
      throw new ArgumentError(`design[${row}]`, 'has another number of columns');
    covariates.forEach((value, column) => {
      requireFinite(`design[${row}][${column}]`, value);
    });
    const label = rows.cluster === undefined ? String(row) : elementAt(rows.cluster, row);
    const known = byCluster.get(label);
    if (known?.some((value, column) => value !== covariates[column])) {
      throw new ArgumentError(`design[${row}]`, 'differs within a cluster');
    }
    byCluster.set(label, covariates);
  });
  return byCluster;
}

function separated(design: readonly (readonly number[])[], coefficients: Float64Array): boolean {
  return design.some((row) => {
    let eta = 0;
    row.forEach((covariate, index) => {
      eta += covariate * elementAt(coefficients, index);
    });
    return Math.abs(eta) > SEPARATED;
  });
}

function standardErrors({ at, covariance }: NewtonMaximum): number[] {
  return Array.from(at, (_, index) => Math.sqrt(covariance?.[index * at.length + index] ?? 0));
}
