import { requireProbability } from '../check-argument';
import { elementAt } from '../element-at';
import { type CannotCompute, cannotCompute } from '../outcome';
import type { KaplanMeier, KaplanMeierStep } from './kaplan-meier';

export type TimeQuantile = {
  readonly kind: 'quantile';
  readonly probability: number;
  /** Time by which this share of units has had the event. */
  readonly estimate: number | CannotCompute;
  readonly low: number | CannotCompute;
  readonly high: number | CannotCompute;
};

/** Shares closer than this to the one sought count as equal (as in R's survival package). */
const EQUAL_WITHIN = Math.sqrt(Number.EPSILON);

/**
 * Time by which a share `probability` of units has had the event (0.5: the median): the first time at which the
 * curve is at or below 1 - probability, the middle of the flat stretch when it lies exactly there. Limits are where
 * the limits of the curve cross, so they follow its transform.
 *
 * Source: Brookmeyer & Crowley (1982, Biometrics 38, 29-41), with the conventions of R's quantile.survfit, from
 * memory.
 */
export function timeQuantile(curve: KaplanMeier, probability: number): TimeQuantile {
  requireProbability('probability', probability);
  const lastTime = curve.steps.at(-1)?.time ?? 0;
  const crossing = (height: (step: KaplanMeierStep) => number | null) =>
    firstAtOrBelow(curve.steps, height, 1 - probability, lastTime);
  const limit = (side: 'low' | 'high') => (step: KaplanMeierStep) =>
    step.interval.kind === 'interval' ? step.interval[side] : null;
  return {
    kind: 'quantile',
    probability,
    estimate: crossing((step) => step.survival),
    low: crossing(limit('low')),
    high: crossing(limit('high')),
  };
}

function firstAtOrBelow(
  steps: readonly KaplanMeierStep[],
  height: (step: KaplanMeierStep) => number | null,
  target: number,
  lastTime: number,
): number | CannotCompute {
  // Only the times at which the curve comes down matter.
  const levels: { time: number; height: number }[] = [];
  let lowest = 1;
  for (const step of steps) {
    const here = height(step);
    if (here === null || here >= lowest) continue;
    lowest = here;
    levels.push({ time: step.time, height: here });
  }
  const first = levels.findIndex((level) => level.height <= target + EQUAL_WITHIN);
  if (first === -1) return cannotCompute('out-of-range', 'Not that many units have had the event yet.');
  const { time, height: reached } = elementAt(levels, first);
  if (reached < target - EQUAL_WITHIN) return time;
  return (time + (levels[first + 1]?.time ?? lastTime)) / 2;
}
