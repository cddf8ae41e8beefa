import { requireEventsOfTrials, requirePositive, requireProbability } from '../check-argument';
import { type CusumShift, cusumWeights } from './cusum-weights';

/** One step of a chart: a batch (or a single unit, `units` = 1) with the probability expected of its units. */
export type CusumStep = { readonly events: number; readonly units: number; readonly probability: number };

export type CusumPath = {
  readonly kind: 'cusum';
  /** Score of each step. */
  readonly weights: readonly number[];
  /** max(0, previous + score) after each step; a signal's own step shows the value that crossed. */
  readonly path: readonly number[];
  /** Steps (0-based) at which the path is at or above the limit. */
  readonly signals: readonly number[];
  readonly method: string;
};

/**
 * Bernoulli CUSUM in the order given, one step a batch: S = max(0, S + events w1 + (units - events) w0), an alarm
 * when S >= limit. Choose the limit for a stated in-control run length with `cusumLimit`.
 *
 * Source: Steiner, Cook, Farewell & Treasure (2000, Biostatistics 1, 441-452, from memory).
 *
 * @param reset start again from 0 after an alarm (the usual choice); otherwise every step above the limit signals.
 * @throws ArgumentError for impossible counts, probabilities outside 0-1, or a limit not above 0.
 */
export function cusumPath(
  steps: readonly CusumStep[],
  shift: CusumShift,
  { limit, reset }: { readonly limit: number; readonly reset: boolean },
): CusumPath {
  requirePositive('limit', limit);
  const weights = steps.map(({ events, units, probability }) => {
    requireEventsOfTrials('events', events, 'units', units);
    requireProbability('probability', probability);
    const score = cusumWeights(probability, shift);
    // A score of -Infinity for an impossible event must not become NaN when there is no such event.
    return (events > 0 ? events * score.event : 0) + (units > events ? (units - events) * score.noEvent : 0);
  });
  const path: number[] = [];
  const signals: number[] = [];
  let level = 0;
  weights.forEach((weight, step) => {
    level = Math.max(0, level + weight);
    path.push(level);
    if (level < limit) return;
    signals.push(step);
    if (reset) level = 0;
  });
  return { kind: 'cusum', weights, path, signals, method: 'Bernoulli CUSUM of log-likelihood ratios' };
}
