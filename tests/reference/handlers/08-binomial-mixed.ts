import { z } from 'zod';
import { normalSurvival } from '../../../lib/stats/distribution/normal';
import type { BinomialMixedInput } from '../../../lib/stats/mixed/binomial/binomial-input';
import { type BinomialMixedFit, fitBinomialMixed } from '../../../lib/stats/mixed/binomial/fit-binomial';
import {
  minusTwoLogLikelihoodAt,
  saturatedMinusTwoLogLikelihood,
} from '../../../lib/stats/mixed/binomial/log-likelihood-at';
import { predictBinomial } from '../../../lib/stats/mixed/binomial/predict-binomial';
import { contrastOf, covarianceOf, unit } from '../../../lib/stats/mixed/coefficients';
import { likelihoodRatioTest } from '../../../lib/stats/mixed/likelihood-ratio';
import { estimated, mixedTerms, named, readMixedCase, requireAnswers } from '../mixed/mixed-case';
import { numbers, parseFormula } from '../mixed/model-formula';
import { orNull } from '../or-null';
import { type ReferenceHandler, statedTolerance, type Tolerance } from '../reference-handler';

const questions = z.object({
  agq: z.record(z.string(), z.object({ nAGQ: z.number() })).default({}),
  lrt: z.array(z.object({ null_formula: z.string() })).default([]),
  population: z.object({ factor: z.string() }).optional(),
  separated_level: z.string().optional(),
  // Without a fixed factor the second program's answers come without names.
  glmmTMB_check: z
    .object({ fixef: z.union([z.array(z.number()), z.record(z.string(), z.number())]) })
    .optional(),
});

type Counts = Pick<BinomialMixedInput, 'events' | 'trials'>;

function byName(fit: BinomialMixedFit, value: (index: number) => unknown) {
  return named(
    fit.coefficients.map(({ name }, index) => ({ name, index })),
    ({ name }) => name,
    ({ index }) => value(index),
  );
}

function estimates(fit: BinomialMixedFit) {
  return byName(fit, (index) => orNull(fit.coefficients[index]?.estimate));
}

function standardErrors(fit: BinomialMixedFit, fixed = fit.fixed) {
  return byName(
    fit,
    (index) => contrastOf(fixed, unit(fit.coefficients.length, index))?.standardError ?? null,
  );
}

function zValues(fit: BinomialMixedFit) {
  return fit.coefficients.map(
    ({ estimate, standardError }) => Number(orNull(estimate)) / Number(orNull(standardError)),
  );
}

function quadratureFits(model: BinomialMixedInput, asked: Record<string, { nAGQ: number }>) {
  const saturated = saturatedMinusTwoLogLikelihood(model.events, model.trials);
  return Object.fromEntries(
    Object.entries(asked).map(([key, { nAGQ }]) => {
      const own = estimated(fitBinomialMixed({ ...model, quadraturePoints: nAGQ }));
      return [
        key,
        {
          nAGQ,
          fixef: estimates(own),
          se_hessian: standardErrors(own),
          sd: own.theta[0],
          neg2loglik_lme4: own.minusTwoLogLikelihood - saturated,
          neg2loglik_all_constants: minusTwoLogLikelihoodAt(own),
        },
      ];
    }),
  );
}

function population(fit: BinomialMixedFit, factor: string, levels: readonly string[]) {
  const answers = predictBinomial(
    fit,
    levels.map((level) => ({ [factor]: level })),
    0.95,
    'normal',
  ).map(estimated);
  return {
    factor,
    levels,
    X: levels.map((level) =>
      fit.coefficients.map(({ name }) => Number(name === '(Intercept)' || name === `${factor}${level}`)),
    ),
    logit_at_zero: answers.map((own) => own.population.logit),
    se_logit: answers.map((own) => own.population.logitStandardError),
    prob_at_zero: answers.map((own) => own.population.probability),
    prob_at_zero_lower: answers.map((own) => own.population.interval.low),
    prob_at_zero_upper: answers.map((own) => own.population.interval.high),
    total_random_variance: fit.varianceComponents.reduce((sum, { variance }) => sum + variance, 0),
    prob_marginal: answers.map((own) => own.marginalProbability),
  };
}

function separationAnswer(fit: BinomialMixedFit, factorNames: readonly string[]) {
  const known = fit.coefficients.filter(({ estimate }) => typeof estimate === 'number');
  const [separated = ''] = fit.separated;
  const factor = factorNames.find((name) => separated.startsWith(name)) ?? '';
  return {
    separated_level: separated.slice(factor.length),
    limit_fixef_other_terms: named(
      known,
      ({ name }) => name,
      ({ estimate }) => estimate,
    ),
    limit_sd: fit.theta[0],
    limit_neg2loglik: fit.minusTwoLogLikelihood,
  };
}

/** The answers of another program, or of a looser call, for the same model. */
function otherAnswers(fit: BinomialMixedFit, unnamed: boolean) {
  const fixef = estimates(fit);
  const se = standardErrors(fit);
  return {
    fixef: unnamed ? Object.values(fixef) : fixef,
    se: unnamed ? Object.values(se) : se,
    theta: [...fit.theta],
    neg2loglik: fit.minusTwoLogLikelihood,
  };
}

/** `cbind(x, n - x)` names the columns of events and trials. */
function counts(response: string, data: Parameters<typeof numbers>[0]): Counts {
  const [, events = '', trials = ''] = /^cbind\(\s*(\w+)\s*,\s*(\w+)\s*-\s*\w+\s*\)$/.exec(response) ?? [];
  return { events: numbers(data, events), trials: numbers(data, trials) };
}

export const handler: ReferenceHandler = {
  method: '08 binomial mixed models, logit link',

  run(input, { expected }) {
    const { formula, data, levels, fixed, random, intercept } = readMixedCase(input);
    const asked = questions.parse(expected);
    const own = counts(formula.response, data);
    const model = { ...own, fixed, random, intercept };
    const fit = estimated(fitBinomialMixed(model));
    if (asked.separated_level !== undefined) {
      return requireAnswers(expected, separationAnswer(fit, formula.fixed.flat()));
    }
    const plain = estimated(fitBinomialMixed({ ...model, random: [] }));
    const test = likelihoodRatioTest(plain, fit, true);
    const z = zValues(fit);
    return requireAnswers(expected, {
      fixef: estimates(fit),
      se_hessian: standardErrors(fit),
      se_rx: standardErrors(fit, fit.fixedGivenTheta),
      vcov_hessian: covarianceOf(fit.fixed, fit.coefficients.length),
      theta: [...fit.theta],
      varcomp: fit.varianceComponents.map(({ term, variance, standardDeviation }) => ({
        group: term,
        terms: ['(Intercept)'],
        covariance: [[variance]],
        sd: [standardDeviation],
        correlation: [[1]],
      })),
      singular: fit.zeroVarianceTerms.length > 0,
      neg2loglik: fit.minusTwoLogLikelihood,
      loglik: -fit.minusTwoLogLikelihood / 2,
      aic: fit.aic,
      bic: fit.bic,
      n_obs: fit.observations,
      n_params: fit.parameters,
      z_value: byName(fit, (index) => z[index]),
      p_value: byName(fit, (index) => 2 * normalSurvival(Math.abs(z[index] ?? Number.NaN))),
      ranef: fit.randomEffects.map((effects) => ({
        group: effects.term,
        levels: effects.levels,
        terms: ['(Intercept)'],
        modes: [...effects.modes].map((mode) => [mode]),
        conditional_variance: [...effects.conditionalVariances].map((variance) => [[variance]]),
      })),
      fitted: [...fit.fitted],
      neg2loglik_exact_at_laplace_estimates: random.length === 1 ? minusTwoLogLikelihoodAt(fit) : undefined,
      agq: quadratureFits(model, asked.agq),
      glm_without_random_effects: {
        coef: estimates(plain),
        neg2loglik: plain.minusTwoLogLikelihood,
        lrt: plain.minusTwoLogLikelihood - fit.minusTwoLogLikelihood,
        lrt_p_half_mixture_1df: test.kind === 'estimate' ? (test.boundaryPValue ?? null) : null,
      },
      lrt: asked.lrt.map(({ null_formula }) => {
        const smaller = mixedTerms(
          parseFormula(null_formula),
          data,
          Object.fromEntries(
            [...formula.fixed, ...formula.random].flat().map((name) => [name, levels(name)]),
          ),
        );
        const reduced = estimated(
          fitBinomialMixed({
            ...own,
            fixed: smaller.fixed,
            random: smaller.random,
            intercept: smaller.intercept,
          }),
        );
        const result = estimated(likelihoodRatioTest(reduced, fit));
        return {
          null_formula,
          neg2loglik_null: reduced.minusTwoLogLikelihood,
          chisq: result.statistic,
          df: result.degreesOfFreedom,
          p_value: result.pValue,
        };
      }),
      population: asked.population
        ? population(fit, asked.population.factor, levels(asked.population.factor))
        : undefined,
      default_glmer_call: otherAnswers(fit, false),
      glmmTMB_check: otherAnswers(fit, Array.isArray(asked.glmmTMB_check?.fixef)),
    });
  },

  tolerance(path, file): Tolerance {
    const stated = (name: string) => statedTolerance(file, name);
    // A default call stops early: the file puts its standard errors at 1 to 1.3 % off.
    if (path.startsWith('default_glmer_call')) return { relative: 0.02, absolute: 2e-3 };
    if (path.startsWith('glmmTMB_check.')) return { relative: 2e-4, absolute: stated('deviance_absolute') };
    if (/(neg2loglik|loglik|aic|bic|lrt$|chisq)/.test(path))
      return { relative: 0, absolute: stated('deviance_absolute') };
    if (/(se_hessian|se_rx|se_logit|vcov|z_value)/.test(path))
      return { relative: stated('se_relative'), absolute: 1e-6 };
    if (/p_value|p_half/.test(path)) return { relative: 2e-2, absolute: stated('deviance_absolute') };
    if (/prob_at_zero_/.test(path)) return { relative: stated('se_relative'), absolute: 0 };
    if (/(theta|sd|varcomp|total_random|prob_marginal)/.test(path)) {
      return { relative: stated('sd_relative'), absolute: stated('zero_variance_absolute') * 1e-3 };
    }
    if (/(ranef|fitted)/.test(path)) return { relative: stated('ranef_relative'), absolute: 1e-7 };
    return { relative: stated('fixef_relative'), absolute: 0 };
  },
};
