import type { FixedTerm } from '@/lib/stats/mixed/design/fixed-term';
import type { PlainFit } from '../fitting/plain-fit';
import { shareName } from './model-terms';

/**
 * What the covariates of a fit add to the linear predictor of each row, with its mean taken out: 'own' of what belongs to a
 * site (the shares), 'mix' of species, material and season. A coefficient that cannot be told apart adds nothing.
 */
export function covariatePart(
  fit: PlainFit,
  fixed: readonly FixedTerm[],
  part: 'own' | 'mix',
): Float64Array | undefined {
  const covariates = fixed.flatMap((term) =>
    term.kind === 'covariate' && term.name.startsWith(shareName) === (part === 'own') ? [term] : [],
  );
  const [first] = covariates;
  if (first === undefined) return undefined;
  const sums = new Float64Array(first.values.length);
  for (const { name, values } of covariates) {
    const estimate = fit.coefficients.find((coefficient) => coefficient.name === name)?.estimate;
    if (typeof estimate !== 'number') continue;
    for (let row = 0; row < sums.length; row += 1)
      sums[row] = (sums[row] ?? 0) + estimate * (values[row] ?? 0);
  }
  const mean = sums.reduce((total, value) => total + value, 0) / sums.length;
  return sums.map((value) => value - mean);
}

/** Mean square of values whose mean is 0. */
export function spreadOf(values: Float64Array | undefined): number {
  if (values === undefined || values.length === 0) return 0;
  return values.reduce((sum, value) => sum + value * value, 0) / values.length;
}
