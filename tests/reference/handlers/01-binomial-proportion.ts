import { z } from 'zod';
import type { CannotCompute, Interval } from '@/lib/stats/outcome';
import { agrestiCoullInterval } from '@/lib/stats/proportion/agresti-coull-interval';
import { clopperPearsonInterval } from '@/lib/stats/proportion/clopper-pearson-interval';
import { jeffreysInterval } from '@/lib/stats/proportion/jeffreys-interval';
import { midPInterval } from '@/lib/stats/proportion/mid-p-interval';
import { oneProportion } from '@/lib/stats/proportion/one-proportion';
import { wilsonContinuityInterval } from '@/lib/stats/proportion/wilson-continuity-interval';
import { wilsonInterval } from '@/lib/stats/proportion/wilson-interval';
import { plainTolerance, type ReferenceHandler } from '../reference-handler';

const inputSchema = z.object({ x: z.number(), n: z.number(), conf: z.number() });

export const handler: ReferenceHandler = {
  method: '01 binomial proportion',
  run(caseInput) {
    const { x, n, conf } = inputSchema.parse(caseInput);
    const one = oneProportion({ events: x, trials: n }, conf);
    return {
      estimate: one.kind === 'estimate' ? one.estimate : null,
      wilson: limits(wilsonInterval(x, n, conf)),
      wilson_cc: limits(wilsonContinuityInterval(x, n, conf)),
      clopper_pearson: limits(clopperPearsonInterval(x, n, conf)),
      mid_p: limits(midPInterval(x, n, conf)),
      jeffreys: limits(jeffreysInterval(x, n, conf)),
      agresti_coull_unclipped: limits(agrestiCoullInterval(x, n, conf)),
    };
  },
  tolerance: plainTolerance,
};

function limits(interval: Interval | CannotCompute): { lower: number | null; upper: number | null } {
  if (interval.kind === 'cannot-compute') return { lower: null, upper: null };
  return { lower: interval.low, upper: interval.high };
}
