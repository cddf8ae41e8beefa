import { z } from 'zod';
import { betaBinomialFit } from '@/lib/stats/clustered/beta-binomial-fit';
import { clusterCounts } from '@/lib/stats/clustered/cluster-counts';
import { compareClusteredProportions } from '@/lib/stats/clustered/compare-clustered-proportions';
import { intraclassCorrelation } from '@/lib/stats/clustered/intraclass-correlation';
import { kornGraubardInterval } from '@/lib/stats/clustered/korn-graubard-interval';
import { linearisedProportion } from '@/lib/stats/clustered/linearised-proportion';
import { logitInterval } from '@/lib/stats/clustered/logit-interval';
import { overdispersionTest } from '@/lib/stats/clustered/overdispersion-test';
import { raoScottInterval } from '@/lib/stats/clustered/rao-scott-interval';
import type { CannotCompute, Interval } from '@/lib/stats/outcome';
import { wilsonInterval } from '@/lib/stats/proportion/wilson-interval';
import { ratioOfSums } from '@/lib/stats/ratio/ratio-of-sums';
import { type ReferenceHandler, statedTolerance } from '../reference-handler';

const inputSchema = z.object({
  x: z.array(z.number()),
  n: z.array(z.number()),
  conf: z.number().default(0.95),
  X: z.array(z.array(z.number())).optional(),
  X_names: z.array(z.string()).optional(),
  group: z.array(z.string()).optional(),
});

type Input = z.infer<typeof inputSchema>;

export const handler: ReferenceHandler = {
  method: '04 clustered proportions',
  run(caseInput) {
    const input = inputSchema.parse(caseInput);
    if (input.group) return { rao_scott_groups: groups(input, input.group) };
    if (input.X) return { beta_binomial: betaBinomial(input, input.X_names ?? []) };
    return { ...proportions(input), beta_binomial: betaBinomial(input, ['(Intercept)']) };
  },
  tolerance(path, file) {
    const absolute = statedTolerance(file, 'absolute');
    const name = path.startsWith('beta_binomial') ? 'beta_binomial_relative' : 'relative';
    return { relative: statedTolerance(file, name), absolute };
  },
};

function proportions({ x, n, conf }: Input): Record<string, unknown> {
  const rows = { events: x, trials: n, level: conf };
  const { clusters } = clusterCounts(rows);
  const linearised = linearisedProportion(clusters);
  const deff = number(linearised.designEffect);
  const kornGraubard = kornGraubardInterval(rows);
  const symmetric = ratioOfSums({
    numerator: clusters.map((cluster) => cluster.events),
    denominator: clusters.map((cluster) => cluster.trials),
    cluster: clusters.map((cluster) => cluster.label),
    level: conf,
  });
  return {
    k: linearised.clusters,
    n: linearised.trials,
    x: linearised.events,
    estimate: linearised.estimate,
    se_linearised: typeof linearised.variance === 'number' ? Math.sqrt(linearised.variance) : null,
    df: linearised.clusters - 1,
    design_effect: deff,
    design_effect_floored_at_1: deff === null ? null : Math.max(1, deff),
    // Without any spread neither alternative has an effective size: not offered, which is not the same as "no value".
    wilson_rao_scott: deff === 0 ? undefined : raoScott(raoScottInterval({ ...rows, floor: false })),
    wilson_rao_scott_floored: raoScott(raoScottInterval({ ...rows, floor: true })),
    wilson_ignoring_clusters: limits(wilsonInterval(linearised.events, linearised.trials, conf)),
    logit_t: limits(logitInterval(rows)),
    mean_t: limits(symmetric.kind === 'estimate' ? symmetric.linearisedInterval : symmetric),
    korn_graubard:
      deff === 0
        ? undefined
        : kornGraubard.kind === 'estimate'
          ? { effective_n: kornGraubard.effectiveTrials, ...limits(kornGraubard.interval) }
          : { effective_n: null, lower: null, upper: null },
    icc_anova: number(intraclassCorrelation(rows)),
    overdispersion: overdispersion(rows, linearised.clusters - 1),
  };
}

function raoScott(answer: ReturnType<typeof raoScottInterval>) {
  if (answer.kind === 'cannot-compute') return { effective_x: null, effective_n: null, ...limits(answer) };
  return {
    effective_x: answer.effectiveEvents,
    effective_n: answer.effectiveTrials,
    ...limits(answer.interval),
  };
}

function overdispersion(rows: Parameters<typeof overdispersionTest>[0], df: number) {
  const test = overdispersionTest(rows);
  if (test.kind === 'cannot-compute') {
    return { pearson_chisq: null, df, p_value: null, phi: null, tarone_z: null, tarone_p_one_sided: null };
  }
  const tarone = 'statistic' in test.tarone ? test.tarone : undefined;
  return {
    pearson_chisq: test.pearson.statistic,
    df: test.pearson.df,
    p_value: test.pearson.pValue,
    phi: test.dispersion,
    tarone_z: tarone?.statistic ?? null,
    tarone_p_one_sided: tarone?.pValue ?? null,
  };
}

function betaBinomial({ x, n, X }: Input, names: readonly string[]): Record<string, unknown> | null {
  const fit = betaBinomialFit({ events: x, trials: n, ...(X && { design: X }) });
  if (fit.kind === 'cannot-compute') return null;
  const named = (values: readonly number[]) =>
    Object.fromEntries(names.map((name, index) => [name, values[index]]));
  const [logit = Number.NaN] = fit.coefficients;
  const [se = Number.NaN] = fit.standardErrors;
  const mu = 1 / (1 + Math.exp(-logit));
  return {
    boundary: fit.boundary,
    coefficients: named(fit.coefficients),
    se_observed_information: named(fit.standardErrors),
    logit_rho: 'estimate' in fit.logitRho ? fit.logitRho.estimate : null,
    se_logit_rho: 'estimate' in fit.logitRho ? fit.logitRho.standardError : null,
    rho: fit.rho,
    loglik: fit.logLikelihood,
    vgam_loglik: fit.logLikelihood,
    loglik_binomial: fit.binomialLogLikelihood,
    lr: fit.likelihoodRatio,
    lr_p_mixture: fit.pValue,
    mu,
    se_mu: se * mu * (1 - mu),
  };
}

function groups({ x, n, conf }: Input, group: readonly string[]): Record<string, unknown> | null {
  const answer = compareClusteredProportions({ events: x, trials: n, group, level: conf });
  if (answer.kind === 'cannot-compute') return null;
  const two = 'newcombe' in answer.difference ? answer.difference : undefined;
  return {
    groups: answer.groups.map((one) => one.group),
    estimate: answer.groups.map((one) => one.estimate),
    design_effect: answer.groups.map((one) => one.designEffect),
    effective_x: answer.groups.map((one) => one.effectiveEvents),
    effective_n: answer.groups.map((one) => one.effectiveTrials),
    chisq: answer.separate.statistic,
    df: answer.separate.df,
    p_value: answer.separate.pValue,
    pooled_design_effect: answer.pooled.designEffect,
    chisq_pooled: answer.pooled.statistic,
    p_value_pooled: answer.pooled.pValue,
    ...(two && {
      difference: two.estimate,
      newcombe_effective: limits(two.newcombe),
      se_difference: two.standardError,
      wald: limits(two.wald),
    }),
    svychisq_F: {
      statistic: answer.secondOrder.statistic,
      ndf: answer.secondOrder.numeratorDf,
      ddf: answer.secondOrder.denominatorDf,
      p_value: answer.secondOrder.pValue,
    },
    svychisq_Chisq: {
      statistic: answer.firstOrder.statistic,
      df: answer.firstOrder.df,
      p_value: answer.firstOrder.pValue,
    },
  };
}

function number(value: number | CannotCompute): number | null {
  return typeof value === 'number' ? value : null;
}

function limits(interval: Interval | CannotCompute): { lower: number | null; upper: number | null } {
  if (interval.kind === 'cannot-compute') return { lower: null, upper: null };
  return { lower: interval.low, upper: interval.high };
}
