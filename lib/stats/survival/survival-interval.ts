import { type CannotCompute, cannotCompute, type Interval } from '../outcome';

/**
 * The scale on which limits are symmetric. 'log-log' keeps them inside 0-1 and covers best with few events; 'log' is
 * the default of R's survfit; 'plain' is for comparison only.
 */
export type SurvivalTransform = 'log-log' | 'log' | 'plain';

/**
 * Limits of a survival share S, `reach` being its standard error times the normal or t quantile:
 * log-log: S^exp(+-reach / (S log S)); log: S exp(-+reach / S), at most 1; plain: S -+ reach within 0-1.
 * On the log-log scale there are none at S = 1.
 *
 * Source: Kalbfleisch & Prentice (The Statistical Analysis of Failure Time Data, ch. 1, from memory).
 */
export function survivalInterval(
  survival: number,
  {
    reach,
    level,
    transform,
  }: { readonly reach: number; readonly level: number; readonly transform: SurvivalTransform },
): Interval | CannotCompute {
  const limits = (low: number, high: number): Interval => ({
    kind: 'interval',
    low,
    high,
    level,
    method: transform,
  });
  if (transform === 'plain') return limits(Math.max(0, survival - reach), Math.min(1, survival + reach));
  if (survival === 0) return cannotCompute('no-variation', 'No unit is left, so there are no limits.');
  if (transform === 'log') {
    const factor = Math.exp(reach / survival);
    return limits(survival / factor, Math.min(1, survival * factor));
  }
  if (survival === 1)
    return cannotCompute('no-variation', 'No event yet, so there are no limits on this scale.');
  const theta = reach / (survival * -Math.log(survival));
  return limits(survival ** Math.exp(theta), survival ** Math.exp(-theta));
}
