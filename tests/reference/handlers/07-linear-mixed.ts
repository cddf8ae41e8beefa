import { z } from 'zod';
import { tSurvival } from '../../../lib/stats/distribution/student-t';
import { covarianceOf, unit } from '../../../lib/stats/mixed/coefficients';
import { workingContrast } from '../../../lib/stats/mixed/design/coefficient-map';
import { fitLinearMixed, type LinearMixedFit } from '../../../lib/stats/mixed/linear/fit-linear';
import { coefficientEffectCovariance } from '../../../lib/stats/mixed/linear/joint-covariance';
import type { LinearMixedInput } from '../../../lib/stats/mixed/linear/linear-input';
import { predictLinear } from '../../../lib/stats/mixed/linear/predict-linear';
import { profileCoefficient } from '../../../lib/stats/mixed/linear/profile-coefficient';
import { profileDeviations } from '../../../lib/stats/mixed/linear/profile-deviations';
import { satterthwaite } from '../../../lib/stats/mixed/linear/satterthwaite';
import { estimated, named, readMixedCase, requireAnswers } from '../mixed/mixed-case';
import { numbers } from '../mixed/model-formula';
import { orNull } from '../or-null';
import { type ReferenceHandler, statedTolerance, type Tolerance } from '../reference-handler';

const newData = z
  .object({
    predict: z.object({ newdata: z.record(z.string(), z.array(z.union([z.string(), z.number()]))) }),
  })
  .optional()
  .catch(undefined);

function coefficients(fit: LinearMixedFit, pick: 'estimate' | 'standardError') {
  return named(
    fit.coefficients,
    ({ name }) => name,
    (own) => orNull(own[pick]),
  );
}

function components(fit: LinearMixedFit) {
  return fit.varianceComponents.map(({ term, variance, standardDeviation }) => ({
    group: term,
    terms: ['(Intercept)'],
    covariance: [[variance]],
    sd: [standardDeviation],
    correlation: [[1]],
  }));
}

function errorVariances(fit: LinearMixedFit) {
  const perTerm = fit.randomEffects.map((_, term) => coefficientEffectCovariance(fit, term));
  return {
    meaning:
      'var(bhat - b) of the random effects, beta estimated (Henderson); cov_beta_b is cov(betahat, bhat - b), rows beta',
    labels: fit.randomEffects.flatMap(({ levels }) => levels.map((level) => `${level}::(Intercept)`)),
    variance: fit.randomEffects.flatMap(({ predictionErrorVariances }) => [...predictionErrorVariances]),
    cov_beta_b: fit.coefficients.map((_, index) => perTerm.flatMap((rows) => [...(rows[index] ?? [])])),
  };
}

function predictions(fit: LinearMixedFit, newdata: Record<string, (string | number)[]>) {
  const count = Object.values(newdata)[0]?.length ?? 0;
  const rows = Array.from({ length: count }, (_, row) =>
    Object.fromEntries(Object.entries(newdata).map(([name, values]) => [name, values[row] ?? ''])),
  );
  const answers = predictLinear(fit, rows).map(estimated);
  return {
    newdata,
    population: answers.map(({ population }) => population.estimate),
    se_population: answers.map(({ population }) => population.standardError),
    conditional: answers.map(({ group }) => group.estimate),
  };
}

function degreesOfFreedom(fit: LinearMixedFit) {
  const degreesOf = satterthwaite(fit);
  const rows = fit.coefficients.map(({ name, estimate, standardError }, index) => {
    const c = workingContrast(fit.fixed.map, unit(fit.coefficients.length, index));
    const df = c ? degreesOf(c) : null;
    const t = Number(orNull(estimate)) / Number(orNull(standardError));
    return { name, df, p: df === null ? null : 2 * tSurvival(Math.abs(t), df) };
  });
  return {
    df: named(
      rows,
      ({ name }) => name,
      ({ df }) => df,
    ),
    p_value: named(
      rows,
      ({ name }) => name,
      ({ p }) => p,
    ),
  };
}

function profiles(fit: LinearMixedFit) {
  const rows = [
    ...profileDeviations(fit).map(({ term, interval }) => ({
      name: term === undefined ? 'sigma' : `sd_(Intercept)|${term}`,
      interval,
    })),
    ...fit.coefficients.map(({ name }) => ({ name, interval: estimated(profileCoefficient(fit, name)) })),
  ];
  return {
    names: rows.map(({ name }) => name),
    lower: rows.map(({ interval }) => interval.low),
    upper: rows.map(({ interval }) => interval.high),
  };
}

export const handler: ReferenceHandler = {
  method: '07 linear mixed models by REML',

  run(input, { expected }) {
    const { formula, data, fixed, random, intercept } = readMixedCase(input);
    if (formula.hasRandomSlopes) return {};
    const model: LinearMixedInput = { response: numbers(data, formula.response), fixed, random, intercept };
    const fit = estimated(fitLinearMixed(model));
    const ml = estimated(fitLinearMixed({ ...model, method: 'ML' }));
    const none = estimated(fitLinearMixed({ ...model, random: [] }));
    const noneMl = estimated(fitLinearMixed({ ...model, random: [], method: 'ML' }));
    const asked = newData.parse(expected)?.predict.newdata;
    return requireAnswers(
      expected,
      {
        fixef: coefficients(fit, 'estimate'),
        se: coefficients(fit, 'standardError'),
        vcov: covarianceOf(fit.fixed, fit.coefficients.length),
        t_value: named(
          fit.coefficients,
          ({ name }) => name,
          (own) => Number(orNull(own.estimate)) / Number(orNull(own.standardError)),
        ),
        sigma: fit.residualStandardDeviation,
        sigma2: fit.residualStandardDeviation ** 2,
        theta: [...fit.theta],
        varcomp: components(fit),
        singular: fit.zeroVarianceTerms.length > 0,
        reml_criterion: fit.minusTwoLogLikelihood,
        loglik_reml: -fit.minusTwoLogLikelihood / 2,
        n_obs: fit.observations,
        n_params: fit.parameters,
        ml: {
          fixef: coefficients(ml, 'estimate'),
          se: coefficients(ml, 'standardError'),
          sigma: ml.residualStandardDeviation,
          varcomp: components(ml),
          neg2loglik: ml.minusTwoLogLikelihood,
          aic: ml.aic,
          bic: ml.bic,
        },
        ranef: fit.randomEffects.map(({ term, levels, modes, conditionalVariances }) => ({
          group: term,
          levels,
          terms: ['(Intercept)'],
          modes: [...modes].map((mode) => [mode]),
          conditional_variance: [...conditionalVariances].map((variance) => [[variance]]),
        })),
        prediction_error_variance: errorVariances(fit),
        fitted: [...fit.fitted],
        residual_ss: fit.residualSquares,
        predict: asked ? predictions(fit, asked) : undefined,
        satterthwaite: degreesOfFreedom(fit),
        profile_ci_95_ml: profiles(ml),
        lrt_no_random_effects_reml: none.minusTwoLogLikelihood - fit.minusTwoLogLikelihood,
        lrt_no_random_effects_ml: noneMl.minusTwoLogLikelihood - ml.minusTwoLogLikelihood,
      },
      ['kenward_roger', 'profile_ci_95_lme4_interpolated'],
    );
  },

  tolerance(path, file): Tolerance {
    const relative = (name: string, absolute = 0) => ({ relative: statedTolerance(file, name), absolute });
    const zero = statedTolerance(file, 'zero_variance_absolute');
    if (/(reml_criterion|loglik|aic|bic|lrt_)/.test(path)) {
      return { relative: 0, absolute: statedTolerance(file, 'criterion_absolute') };
    }
    if (path.startsWith('profile_ci')) return relative('profile_relative');
    if (path.startsWith('satterthwaite')) return relative('df_relative');
    if (/(theta|sigma|varcomp)/.test(path)) return relative('sd_relative', zero * 1e-4);
    // Covariances and modes that are exactly 0 in theory come out as rounding on both sides.
    if (/(ranef|prediction_error|fitted|residual)/.test(path)) return relative('ranef_relative', 1e-8);
    if (/(^|\.)(se|t_value|vcov|se_population)(\.|$)/.test(path)) return relative('se_relative', 1e-10);
    return relative('fixef_relative');
  },
};
