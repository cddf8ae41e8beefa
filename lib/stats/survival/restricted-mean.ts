import { requireNonNegative } from '../check-argument';
import { type CannotCompute, cannotCompute } from '../outcome';
import type { KaplanMeier } from './kaplan-meier';

export type RestrictedMean = {
  readonly kind: 'estimate';
  /** Mean time without an event up to `until`: the area under the curve. */
  readonly estimate: number;
  /** For independent units: sqrt(sum(area from t to until)^2 d / (Y (Y - d))). */
  readonly standardError: number;
  readonly until: number;
  readonly units: number;
  readonly method: 'restricted mean, area under Kaplan-Meier';
};

/**
 * Restricted mean time to the event.
 *
 * Source: Irwin (1949, J Hygiene 47, 188-189), Klein & Moeschberger (Survival Analysis, ch. 4), from memory.
 *
 * @param until a time within the watching; by default the longest. Beyond it the curve is not known.
 */
export function restrictedMean(curve: KaplanMeier, until?: number): RestrictedMean | CannotCompute {
  const longest = curve.steps.at(-1)?.time ?? 0;
  const end = until ?? longest;
  requireNonNegative('until', end);
  if (end > longest) return cannotCompute('out-of-range', `Nothing was watched for longer than ${longest}.`);
  let estimate = 0;
  let survival = 1;
  let from = 0;
  const events: { areaBefore: number; term: number }[] = [];
  for (const step of curve.steps) {
    if (step.time > end) break;
    estimate += survival * (step.time - from);
    from = step.time;
    survival = step.survival;
    if (step.events > 0 && step.atRisk > step.events) {
      events.push({ areaBefore: estimate, term: step.events / (step.atRisk * (step.atRisk - step.events)) });
    }
  }
  estimate += survival * (end - from);
  const variance = events.reduce((sum, { areaBefore, term }) => sum + (estimate - areaBefore) ** 2 * term, 0);
  return {
    kind: 'estimate',
    estimate,
    standardError: Math.sqrt(variance),
    until: end,
    units: curve.units,
    method: 'restricted mean, area under Kaplan-Meier',
  };
}
