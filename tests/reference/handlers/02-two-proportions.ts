import { z } from 'zod';
import type { CannotCompute, Interval } from '@/lib/stats/outcome';
import { boschlooTest } from '@/lib/stats/proportion/boschloo-test';
import { chiSquareTest } from '@/lib/stats/proportion/chi-square-test';
import { fisherExact } from '@/lib/stats/proportion/fisher-exact';
import { newcombeDifference } from '@/lib/stats/proportion/newcombe-difference';
import { oddsRatio, oddsRatioHalfAdded } from '@/lib/stats/proportion/odds-ratio';
import { riskRatio, riskRatioHalfAdded } from '@/lib/stats/proportion/risk-ratio';
import type { RatioOfTwo } from '@/lib/stats/proportion/two-proportions';
import { waldDifference } from '@/lib/stats/proportion/wald-difference';
import { type ReferenceHandler, statedTolerance } from '../reference-handler';

const inputSchema = z.object({
  x1: z.number(),
  n1: z.number(),
  x2: z.number(),
  n2: z.number(),
  conf: z.number(),
});

export const handler: ReferenceHandler = {
  method: '02 two independent proportions',
  run(caseInput) {
    const { x1, n1, x2, n2, conf } = inputSchema.parse(caseInput);
    const first = { events: x1, trials: n1 };
    const second = { events: x2, trials: n2 };
    const newcombe = newcombeDifference(first, second, conf);
    const wald = waldDifference(first, second, conf);
    const fisher = fisherExact(first, second, conf);
    const boschloo = boschlooTest(first, second);
    return {
      p1: x1 / n1,
      p2: x2 / n2,
      difference: newcombe.kind === 'estimate' ? newcombe.estimate : null,
      newcombe: limits(newcombe.kind === 'estimate' ? newcombe.interval : newcombe),
      wald: limits(wald.kind === 'estimate' ? wald.interval : wald),
      risk_ratio_katz: ratio(riskRatio(first, second, conf)),
      risk_ratio_half_added: ratio(riskRatioHalfAdded(first, second, conf)),
      odds_ratio_woolf: ratio(oddsRatio(first, second, conf)),
      odds_ratio_half_added: ratio(oddsRatioHalfAdded(first, second, conf)),
      fisher:
        fisher.kind === 'test'
          ? {
              p_two_sided: fisher.pValue,
              or_conditional_mle: number(fisher.oddsRatio),
              or_lower: fisher.interval.low,
              or_upper: fisher.interval.high,
            }
          : null,
      boschloo_p_two_sided: boschloo.kind === 'test' ? boschloo.pValue : null,
      chisq_pearson: chiSquare(first, second, false),
      chisq_yates: chiSquare(first, second, true),
    };
  },
  tolerance(path, file) {
    const absolute = statedTolerance(file, 'absolute');
    if (path.startsWith('fisher.or_')) {
      return { relative: statedTolerance(file, 'fisher_or_relative'), absolute };
    }
    if (path.startsWith('boschloo'))
      return { relative: statedTolerance(file, 'boschloo_relative'), absolute };
    return { relative: statedTolerance(file, 'relative'), absolute };
  },
};

function number(value: number | CannotCompute): number | null {
  return typeof value === 'number' ? value : null;
}

function limits(interval: Interval | CannotCompute): { lower: number | null; upper: number | null } {
  if (interval.kind === 'cannot-compute') return { lower: null, upper: null };
  return { lower: interval.low, upper: interval.high };
}

function ratio(value: RatioOfTwo | CannotCompute) {
  if (value.kind === 'cannot-compute') return { estimate: null, se_log: null, ...limits(value) };
  return { estimate: value.estimate, se_log: number(value.standardErrorOfLog), ...limits(value.interval) };
}

function chiSquare(...args: Parameters<typeof chiSquareTest>) {
  const test = chiSquareTest(...args);
  if (test.kind === 'cannot-compute') return { statistic: null, p_value: null };
  return { statistic: test.statistic, p_value: test.pValue };
}
