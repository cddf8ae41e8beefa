import { binomialMeansSource } from '../../../lib/stats/mixed/binomial/binomial-means';
import { type BinomialMixedFit, fitBinomialMixed } from '../../../lib/stats/mixed/binomial/fit-binomial';
import { logistic } from '../../../lib/stats/mixed/binomial/marginal-probability';
import { covarianceOf } from '../../../lib/stats/mixed/coefficients';
import { fitLinearMixed, type LinearMixedFit } from '../../../lib/stats/mixed/linear/fit-linear';
import { marginalMeans } from '../../../lib/stats/mixed/means/marginal-means';
import { orNull } from '../or-null';
import { estimated, mixedTerms, named } from './mixed-case';
import { parseFormula } from './model-formula';
import { modelColumns, type NetworkBatch } from './network-data';

type Fit = BinomialMixedFit | LinearMixedFit;

function shared(fit: Fit) {
  const pick = (key: 'estimate' | 'standardError') =>
    named(
      fit.coefficients,
      ({ name }) => name,
      (own) => orNull(own[key]),
    );
  return {
    fixef: pick('estimate'),
    se: pick('standardError'),
    vcov: covarianceOf(fit.fixed, fit.coefficients.length),
    sd: named(
      fit.varianceComponents,
      ({ term }) => term,
      ({ standardDeviation }) => standardDeviation,
    ),
  };
}

function effects(fit: Fit, groups: readonly string[]) {
  return groups.map((group) => {
    const own = fit.randomEffects.find(({ term }) => term === group);
    return {
      group,
      levels: own?.levels,
      modes: [...(own?.modes ?? [])],
      conditional_variance: [...(own?.conditionalVariances ?? [])],
    };
  });
}

/** A contamination model over closed batches. */
export function contaminationModel(closed: readonly NetworkBatch[], random: string) {
  const data = modelColumns(closed, {});
  const terms = mixedTerms(parseFormula(`contaminated ~ method + ${random}`), data);
  const fit = estimated(
    fitBinomialMixed({
      events: closed.map(({ contaminated }) => contaminated),
      trials: closed.map(({ units }) => units),
      fixed: terms.fixed,
      random: terms.random,
    }),
  );
  const means = marginalMeans(binomialMeansSource(fit), 'method').map(estimated);
  const own = shared(fit);
  return {
    ...own,
    neg2loglik: fit.minusTwoLogLikelihood,
    aic: fit.aic,
    glmmTMB_check: { neg2loglik: fit.minusTwoLogLikelihood, fixef: own.fixef, se: own.se },
    ranef: effects(fit, ['site', 'lot']),
    method_prob_at_zero: {
      level: means.map(({ level }) => level),
      prob: means.map(({ estimate }) => logistic(estimate)),
      lower: means.map(({ interval }) => logistic(interval.low)),
      upper: means.map(({ interval }) => logistic(interval.high)),
    },
  };
}

/** A biological-efficiency model over closed, harvested batches. */
export function efficiencyModel(
  batches: readonly NetworkBatch[],
  response: 'be' | 'logbe',
): { fit: LinearMixedFit; answer: Record<string, unknown> } {
  const formula = `${response} ~ method + (1 | site) + (1 | lot)`;
  const terms = mixedTerms(parseFormula(formula), modelColumns(batches, {}));
  const ratios = batches.map(({ freshKg, dryKg }) => freshKg / dryKg);
  const fit = estimated(
    fitLinearMixed({
      response: ratios.map((ratio) => (response === 'be' ? 100 * ratio : Math.log(ratio))),
      fixed: terms.fixed,
      random: terms.random,
    }),
  );
  return {
    fit,
    answer: {
      formula,
      ...shared(fit),
      sigma: fit.residualStandardDeviation,
      reml_criterion: fit.minusTwoLogLikelihood,
      ranef: effects(
        fit,
        fit.randomEffects.map(({ term }) => term),
      ),
    },
  };
}
