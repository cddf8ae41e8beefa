import type { MeansSource } from '../means/marginal-means';
import type { LinearMixedFit } from './fit-linear';
import { satterthwaite } from './satterthwaite';

/**
 * A linear fit as the source of adjusted means and their differences, with Satterthwaite's degrees of freedom (n - p without
 * random terms) or, for large data, normal limits.
 */
export function linearMeansSource(
  fit: LinearMixedFit,
  degrees: 'satterthwaite' | 'normal' = 'satterthwaite',
): MeansSource {
  return {
    terms: fit.model.terms,
    fixed: fit.fixed,
    degreesOf: degrees === 'normal' ? () => Number.POSITIVE_INFINITY : satterthwaite(fit),
  };
}
