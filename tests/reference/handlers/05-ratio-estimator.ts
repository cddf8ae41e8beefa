import { z } from 'zod';
import type { CannotCompute, Interval } from '@/lib/stats/outcome';
import { compareDomainRatios } from '@/lib/stats/ratio/compare-domain-ratios';
import { jackknifeRatio } from '@/lib/stats/ratio/jackknife-ratio';
import { meanOfRatios } from '@/lib/stats/ratio/mean-of-ratios';
import { ratioByDomain } from '@/lib/stats/ratio/ratio-by-domain';
import { ratioOfSums } from '@/lib/stats/ratio/ratio-of-sums';
import { plainTolerance, type ReferenceHandler } from '../reference-handler';

const inputSchema = z.object({
  y: z.array(z.number()),
  x: z.array(z.number()),
  cluster: z.array(z.string()),
  domain: z.array(z.string()).optional(),
  conf: z.number(),
});

type Input = z.infer<typeof inputSchema>;

export const handler: ReferenceHandler = {
  method: '05 ratio estimator (biological efficiency)',
  run(caseInput) {
    const input = inputSchema.parse(caseInput);
    const rows = { numerator: input.y, denominator: input.x, cluster: input.cluster, level: input.conf };
    if (input.domain) return byDomain({ ...rows, domain: input.domain });
    const ratio = ratioOfSums(rows);
    const jackknife = jackknifeRatio(rows);
    if (ratio.kind === 'cannot-compute') return {};
    return {
      rows: ratio.rows,
      k: ratio.clusters,
      sum_y: ratio.sumNumerator,
      sum_x: ratio.sumDenominator,
      ratio: ratio.estimate,
      se_linearised: number(ratio.standardError),
      df: ratio.degreesOfFreedom,
      t_interval: limits(ratio.linearisedInterval),
      ...(jackknife.kind === 'estimate' && {
        se_jackknife: jackknife.standardErrorAboutMean,
        se_jackknife_about_mean_of_replicates: jackknife.standardErrorAboutMean,
        se_jackknife_about_estimate: jackknife.standardErrorAboutEstimate,
      }),
      mean_of_ratios: mean(input),
    };
  },
  tolerance: plainTolerance,
};

function mean(input: Input) {
  const answer = meanOfRatios({ numerator: input.y, denominator: input.x, level: input.conf });
  if (answer.kind === 'cannot-compute') return { n: 0, mean: null, se: null, lower: null, upper: null };
  return {
    n: answer.rows,
    mean: answer.estimate,
    se: number(answer.standardError),
    ...limits(answer.interval),
  };
}

function byDomain(rows: Parameters<typeof ratioByDomain>[0]): Record<string, unknown> {
  const ratios = ratioByDomain(rows);
  if (ratios.kind === 'cannot-compute') return {};
  const names = ratios.domains.map((entry) => entry.domain);
  const pairs = names.flatMap((a, index) => names.slice(index + 1).map((b) => ({ a, b })));
  return {
    domains: names,
    ratio: ratios.domains.map((entry) => entry.estimate),
    se: ratios.domains.map((entry) => entry.standardError),
    covariance: ratios.covariance,
    df: ratios.df,
    comparisons: pairs.map(({ a, b }) => {
      const comparison = compareDomainRatios(ratios, a, b);
      return {
        a,
        b,
        difference: comparison.estimate,
        se: comparison.standardError,
        ...limits(comparison.interval),
        p_value: number(comparison.pValue),
        ratio_of_ratios: number(comparison.ratioOfRatios),
        se_log: number(comparison.standardErrorOfLog),
      };
    }),
  };
}

function number(value: number | CannotCompute): number | null {
  return typeof value === 'number' ? value : null;
}

function limits(interval: Interval | CannotCompute): { lower: number | null; upper: number | null } {
  if (interval.kind === 'cannot-compute') return { lower: null, upper: null };
  return { lower: interval.low, upper: interval.high };
}
